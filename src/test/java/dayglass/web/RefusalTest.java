package dayglass.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import dayglass.support.Served;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is sent over a bare socket, the answer is a problem document and never the program's own failure. */
class RefusalTest extends OneServer {
    private static final int TOO_MANY_BYTES = 2 * 1024 * 1024 + 1;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/jobs/abc",
                "/api/jobs/0",
                "/api/jobs/-1",
                "/api/jobs/01",
                "/api/jobs/1.0",
                "/api/jobs/1e3",
                "/api/jobs/9223372036854775808",
                "/api/jobs/99999999999999999999999999999999",
                "/api/jobs/%31%32x",
                "/api/jobs/%E2%82%AC",
                "/api/jobs/1%00",
                "/api/jobs/7",
                "/api/costings/abc",
                "/api/costings/abc/comparison?with=1",
                "/api/jobs/abc/request",
                "/api/nothing",
                "/api/jobs/",
                "//api/jobs",
                "/nothing/at/all",
                "/api/jobs/1/2/3"
            })
    void whatIsNotThere(String address) {
        Reply reply = served.raw("GET", address, "\r\n");
        assertTrue(List.of(404, 400).contains(reply.status()), reply.toString());
        assertEquals(List.of(), served.contract().problemFaults(reply));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PATCH  | /api/suppliers            | GET, HEAD, POST",
                "DELETE | /api/suppliers            | GET, HEAD, POST",
                "POST   | /api/suppliers/1          | DELETE, GET, HEAD, PUT",
                "PUT    | /api/costings/1           | DELETE, GET, HEAD",
                "GET    | /api/jobs/1/copy          | POST",
                "DELETE | /api/jobs/1/request       | GET, HEAD"
            })
    void aMethodThatIsNotKnownThere(String method, String address, String allowed) {
        Reply reply = served.raw(method, address, "Content-Length: 0\r\n\r\n");
        assertEquals(405, reply.status());
        List<String> methods = List.of(reply.header("Allow").orElseThrow().split(", ", -1));
        assertEquals(allowed, String.join(", ", methods.stream().sorted().toList()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "nonsense",
                "[1, 2",
                "{\"name\": \"a\"} {}",
                "{\"name\": 'a'}",
                "{\"name\": \"\\ud8\"}",
                "{\"name\": 1}",
                "{\"name\": null}",
                "{\"name\": [\"a\"]}",
                "{\"name\": \"a\", \"name\": \"b\"}",
                "{\"name\": \"a\", \"colour\": 1}",
                "{\"name\": \"\"}",
                "{\"name\": \"\\u0000\"}",
                "{\"name\": \"\\ud800\"}",
                "[]",
                "null",
                "true",
                "1"
            })
    void aBodyThatIsNoSupplier(String body) {
        for (String method : List.of("POST /api/suppliers", "POST /api/costings", "POST /api/jobs/import")) {
            String[] parts = method.split(" ", -1);
            Reply reply = served.raw(parts[0], parts[1], json(body));
            assertEquals(400, reply.status());
            assertEquals("faulty-request", reply.kind());
            assertTrue(reply.json().get("faults").size() > 0);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "nonsense", "[]", "null", "{\"colour\": 1}", "{\"timeLimit\": 3}"})
    void aBodyWhereNoneIsRead(String body) {
        Reply job = served.post("/api/jobs/import", Served.example("01-three-day-week"));
        String toCost = "/api/jobs/" + job.id() + "/costings";
        Reply costing = served.post(toCost, "{}");
        assertEquals(201, costing.status());
        for (String address : List.of(toCost, "/api/costings/" + costing.id() + "/run-again")) {
            Reply reply = served.raw("POST", address, json(body));
            assertEquals(400, reply.status(), reply.text());
            assertEquals("faulty-request", reply.kind());
            String inText = body.length() + "\r\n\r\n" + body;
            assertEquals(
                    415,
                    served.raw("POST", address, "Content-Type: text/plain\r\nContent-Length: " + inText)
                            .status());
        }
    }

    private static String json(String body) {
        return "Content-Type: application/json\r\nContent-Length: " + body.getBytes(StandardCharsets.UTF_8).length
                + "\r\n\r\n" + body;
    }

    @Test
    void aBodyThatIsNoUtf8() {
        byte[] head = ("POST /api/suppliers HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                        + "Content-Type: application/json\r\nContent-Length: 13\r\n\r\n{\"name\": \"a")
                .getBytes(StandardCharsets.US_ASCII);
        byte[] request = java.util.Arrays.copyOf(head, head.length + 2);
        request[head.length] = (byte) 0xFF;
        request[head.length + 1] = '"';
        assertEquals(400, served.raw("POST", "/api/suppliers", request).status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Content-Type: text/plain\r\n",
                "Content-Type: application/x-www-form-urlencoded\r\n",
                "Content-Type: application/json; charset=utf-16\r\n",
                "Content-Type: application/jsonp\r\n",
                "Content-Type: application/problem+json\r\n",
                "Content-Type: ;;;\r\n",
                "Content-Type: application/json\r\nContent-Encoding: gzip\r\n"
            })
    void aBodyInAnotherForm(String type) {
        Reply reply = served.raw("POST", "/api/suppliers", type + "Content-Length: 13\r\n\r\n{\"name\": \"a\"}");
        assertEquals(415, reply.status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/api/jobs?after=%FF", "/api/jobs?%C3=1", "/desk?x=%C0%AF"})
    void anAddressThatIsNoUtf8(String address) {
        Reply reply = served.raw("GET", address, "\r\n");
        assertEquals(400, reply.status());
        assertTrue(reply.json().get("detail").asString().contains("UTF-8"), reply.text());
    }

    @Test
    void utf8MayBeNamed() {
        Reply reply = served.raw(
                "POST",
                "/api/suppliers",
                "Content-Type: Application/JSON; Charset=\"UTF-8\"\r\nContent-Length: 16\r\n\r\n{\"name\": \"utf8\"}");
        assertEquals(201, reply.status());
    }

    @Test
    void aBodyThatSaysItIsTooLarge() {
        Reply reply = served.raw(
                "POST",
                "/api/suppliers",
                "Content-Type: application/json\r\nContent-Length: " + TOO_MANY_BYTES + "\r\n\r\n");
        assertEquals(413, reply.status());
    }

    @Test
    void aBodyThatIsTooLargeAndSentInChunks() {
        String chunk = "10000\r\n" + " ".repeat(0x10000) + "\r\n";
        Reply reply = served.raw(
                "POST",
                "/api/costings",
                "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n" + chunk.repeat(33)
                        + "0\r\n\r\n");
        assertEquals(413, reply.status());
    }

    @Test
    void aBodyOfExactlyTheLimitIsRead() {
        String body = "{\"name\": \"a\"" + " ".repeat(TOO_MANY_BYTES - 14) + "}";
        assertEquals(TOO_MANY_BYTES - 1, body.length());
        assertEquals(201, served.raw("POST", "/api/suppliers", json(body)).status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GARBAGE||",
                "GET||",
                "GET /api/jobs||",
                "GET /api/jobs HTTP/9.9|Host: localhost||",
                "GET /api/jobs/%zz HTTP/1.1|Host: localhost|Connection: close||",
                "GET /api/jobs/%C0%AF HTTP/1.1|Host: localhost|Connection: close||",
                "GET /../../secret HTTP/1.1|Host: localhost|Connection: close||",
                "GET /api/jobs HTTP/1.1|Connection: close||",
                "GET /api/jobs HTTP/1.1|Host: localhost|Host: other|Connection: close||",
                "GET /api/jobs HTTP/1.1|Host: localhost|no colon|Connection: close||",
                "POST /api/suppliers HTTP/1.1|Host: localhost|Content-Type: application/json|Content-Length: abc|Connection: close||",
                "POST /api/suppliers HTTP/1.1|Host: localhost|Content-Type: application/json|Transfer-Encoding: chunked|Connection: close||zz|"
            })
    // A bar stands for a line end.
    void whatIsNoHttp(String request) {
        Reply reply = served.raw("GET", "/", request.replace("|", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(reply.status() >= 400 && reply.status() < 506 && reply.status() != 500, reply.toString());
        assertEquals(List.of(), served.contract().problemFaults(reply));
    }

    @Test
    void noiseNeverMakesTheProgramFail() {
        Random random = new Random(20261125);
        for (int round = 0; round < 300; round++) {
            String path = "/api/"
                    + List.of("jobs", "suppliers", "costings", "rate-cards").get(random.nextInt(4));
            StringBuilder tail = new StringBuilder(random.nextBoolean() ? "/" : "?");
            for (int length = random.nextInt(12); length > 0; length--) {
                tail.append((char) ('!' + random.nextInt(94)));
            }
            byte[] request = ("GET " + path + tail + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.ISO_8859_1);
            Reply reply = served.raw("GET", path + tail, request);
            assertTrue(reply.status() == 200 || reply.status() == 404 || reply.status() == 400, path + tail + reply);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "limit=0",
        "limit=201",
        "limit=abc",
        "limit=1&limit=2",
        "after=-1",
        "after=x",
        "colour=red",
        "limit=",
        "after=99999999999999999999"
    })
    void aParameterThatCannotBeUsed(String query) {
        Reply reply = served.get("/api/jobs?" + query);
        assertEquals(400, reply.status());
        assertEquals("malformed", reply.kind());
    }

    @ParameterizedTest
    @CsvSource({"timeLimit=0", "timeLimit=601", "timeLimit=2.5", "timeLimit=soon", "timelimit=3"})
    void aTimeLimitThatCannotBeUsed(String query) {
        assertEquals(
                400,
                served.post("/api/costings?" + query, Served.example("01-three-day-week"))
                        .status());
    }

    @ParameterizedTest
    @CsvSource({
        "localhost, 200",
        "LOCALHOST:80, 200",
        "127.0.0.1, 200",
        "[::1]:8080, 200",
        "evil.test, 421",
        "localhost.evil.test, 421",
        "127.0.0.1.evil.test:80, 421"
    })
    void onlyThisMachineIsAnsweredFor(String host, int status) {
        byte[] request = ("GET /api/suppliers HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
        assertEquals(status, served.raw("GET", "/api/suppliers", request).status());
    }

    @ParameterizedTest
    @CsvSource({
        "Origin: http://evil.test, 403",
        "Origin: null, 403",
        "Origin: http://127.0.0.1:1, 403",
        "Sec-Fetch-Site: cross-site, 403",
        "Sec-Fetch-Site: same-site, 403",
        "Sec-Fetch-Site: same-origin, 400",
        "Origin: http://127.0.0.1, 400"
    })
    void otherSitesMayNotWrite(String header, int status) {
        assertEquals(
                status,
                served.raw("POST", "/api/suppliers", header + "\r\n" + json("{}"))
                        .status());
    }

    @Test
    void otherSitesAreNotToldApartWhenReading() {
        assertEquals(
                200,
                served.raw("GET", "/api/suppliers", "Sec-Fetch-Site: cross-site\r\n\r\n")
                        .status());
    }

    @Test
    void theServerSaysNothingOfItself() {
        assertEquals(Optional.empty(), served.get("/api/jobs").header("Server"));
    }
}
