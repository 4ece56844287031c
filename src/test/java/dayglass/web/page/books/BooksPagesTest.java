package dayglass.web.page.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Served;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The books as whoever keeps them does, page by page. */
class BooksPagesTest {
    private final HttpClient client = HttpClient.newHttpClient();

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Served served;

    @BeforeEach
    void serve() {
        served = Served.in(folder);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.header("Accept", "text/html").build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private HttpRequest.Builder to(String address) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + address));
    }

    private String page(String address) {
        HttpResponse<String> answer = send(to(address).GET());
        assertEquals(200, answer.statusCode(), answer.body());
        return answer.body();
    }

    /** Names and values of fields in turn. */
    private HttpResponse<String> post(String address, String... fields) {
        StringBuilder body = new StringBuilder();
        for (int at = 0; at < fields.length; at += 2) {
            body.append(body.isEmpty() ? "" : "&")
                    .append(URLEncoder.encode(fields[at], StandardCharsets.UTF_8))
                    .append('=')
                    .append(URLEncoder.encode(fields[at + 1], StandardCharsets.UTF_8));
        }
        return send(to(address)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body.toString())));
    }

    @Test
    void withoutAJobTheBooksSayHowTheyBegin() {
        assertTrue(page("/books").contains("There is no job yet"));
        assertTrue(page("/").contains("<a href=\"/books\""));
    }

    @Test
    void fromACostingToAClosedPeriod() {
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        long costing = served.post("/api/jobs/" + job + "/costings", "{}").id();
        assertEquals(303, send(to("/books").GET()).statusCode());
        String books = "/books/" + job;
        assertTrue(page(books).contains("A costing that is not in the books"));
        HttpResponse<String> faulty =
                post(books + "/accept", "costing", costing + "", "/date", "soon", "/as", "commitment");
        assertEquals(422, faulty.statusCode());
        assertTrue(faulty.body().contains("f--date-fault"), faulty.body());
        assertEquals(
                303,
                post(books + "/accept", "costing", costing + "", "/date", "2027-04-01", "/as", "commitment")
                        .statusCode());
        assertTrue(page(books).contains("entries?kind=commitment"));

        var order = served.get("/api/jobs/" + job + "/commitments").json().at("/items/0");
        String supplier = order.get("supplier").asString();
        String open = page(books + "/invoices?supplier=" + URLEncoder.encode(supplier, StandardCharsets.UTF_8));
        assertTrue(open.contains("Net on the invoice"), open);
        String[] invoice = {
            "/supplier",
            supplier,
            "/number",
            "A-9",
            "/date",
            "2027-04-20",
            "/lines/0/commitment",
            order.get("commitment").asString(),
            "/lines/0/net",
            "1.00",
            "do",
            "look",
            "/lines/0/explanation",
            ""
        };
        HttpResponse<String> looked = post(books + "/invoices", invoice);
        assertEquals(200, looked.statusCode());
        assertTrue(looked.body().contains("say why it differs"), looked.body());
        invoice[11] = "post";
        HttpResponse<String> refused = post(books + "/invoices", invoice);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("f--lines-0-explanation-fault"), refused.body());
        invoice[13] = "a friend's price";
        assertEquals(303, post(books + "/invoices", invoice).statusCode());
        assertTrue(page(books + "/invoices").contains("A-9"));

        assertEquals(
                303,
                post(
                                books + "/entries",
                                "/kind",
                                "actual",
                                "/date",
                                "2027-04-20",
                                "/description",
                                "taxi",
                                "/net",
                                "12.50")
                        .statusCode());
        assertEquals(
                422,
                post(books + "/entries", "/kind", "actual", "/date", "2027-04-20", "/net", "x")
                        .statusCode());
        assertTrue(page(books + "/entries?kind=actual").contains("taxi"));
        String entry = "/books/entries/"
                + served.get("/api/jobs/" + job + "/book-entries?kind=actual&limit=200")
                        .json()
                        .at("/items/1/id")
                        .asLong();
        assertTrue(page(entry).contains("Take it back"));
        assertEquals(422, post(entry + "/reversal", "/date", "2027-04-21").statusCode());
        assertEquals(
                303,
                post(entry + "/reversal", "/date", "2027-04-21", "/reason", "paid in cash")
                        .statusCode());
        assertTrue(page(entry).contains("taken back"));

        String periods = page(books + "/periods");
        assertTrue(periods.contains("Close this period"), periods);
        assertEquals(422, post(books + "/close", "lastDay", "2030-01-06").statusCode());
        assertEquals(303, post(books + "/close", "lastDay", "2027-04-04").statusCode());
        assertTrue(page(books + "/periods").contains("Closed through"));
        assertEquals(422, post(books + "/reopen", "/reason", " ").statusCode());
        assertEquals(303, post(books + "/reopen", "/reason", "a late invoice").statusCode());
        HttpResponse<String> chart = post(books + "/chart", "version", "0", "/text", "code,name\n,no code\n");
        assertEquals(422, chart.statusCode());
        assertTrue(chart.body().contains("Line 2: the code is missing"), chart.body());
        assertEquals(404, send(to("/books/99999").GET()).statusCode());
    }
}
