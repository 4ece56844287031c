package dayglass.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import dayglass.support.Served;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** HEAD is answered as GET is, without the body (RFC 9110, section 9.3.2). */
class HeadTest extends OneServer {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @BeforeAll
    static void fill() {
        assertEquals(
                201,
                served.post("/api/jobs/import", Served.example("01-three-day-week"))
                        .status());
        assertEquals(201, served.post("/api/jobs/1/costings", "").status());
    }

    private static HttpResponse<byte[]> send(String method, String address) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + address))
                .header("Accept", "text/html,*/*")
                .method(method, BodyPublishers.noBody())
                .build();
        return CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    private static Map<String, List<String>> headers(HttpResponse<?> response) {
        Map<String, List<String>> headers = new TreeMap<>(response.headers().map());
        headers.remove("date");
        return headers;
    }

    @ParameterizedTest
    @CsvSource({
        "/, 200",
        "/jobs/1, 200",
        "/costings/1, 200",
        "/costings/1/lines.csv, 200",
        "/costings/1/lines.xlsx, 200",
        "/desk, 200",
        "/reference, 200",
        "/openapi.json, 200",
        "/static/dayglass.css, 200",
        "/api/suppliers, 200",
        "/api/suppliers/1, 200",
        "/api/costings/1, 200",
        "/api/changes, 200",
        "/api/suppliers?colour=red, 400",
        "/api/suppliers/99999, 404",
        "/api/jobs/abc, 404",
        "/jobs/999, 404",
        "/nothing, 404",
        "/api/jobs/1/copy, 405"
    })
    void theStatusAndTheHeadersAreThoseOfGet(String address, int status) throws Exception {
        HttpResponse<byte[]> get = send("GET", address);
        HttpResponse<byte[]> head = send("HEAD", address);
        assertEquals(status, head.statusCode());
        assertEquals(get.statusCode(), head.statusCode());
        assertEquals(headers(get), headers(head));
        assertTrue(get.body().length > 0);
        assertEquals(0, head.body().length);
    }

    @Test
    void noBodyIsSent() {
        Reply reply = served.raw("HEAD", "/api/suppliers/1", "\r\n");
        assertEquals(200, reply.status());
        assertEquals("", reply.text());
        assertEquals("\"1\"", reply.etag());
    }
}
