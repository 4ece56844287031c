package dayglass.web.page.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.FreshServer;
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
import org.junit.jupiter.api.Test;

/** The books as whoever keeps them does, page by page. */
class BooksPagesTest extends FreshServer {
    private final HttpClient client = HttpClient.newHttpClient();

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

    @Test
    void aFormThatIsSentTwicePostsOnce() {
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        String books = "/books/" + job;
        assertTrue(page(books + "/entries").contains("name=\"once\""));
        String[] entry = {
            "once", "k-1", "/kind", "actual", "/date", "2027-04-20", "/description", "taxi", "/net", "12.50"
        };
        HttpResponse<String> first = post(books + "/entries", entry);
        HttpResponse<String> second = post(books + "/entries", entry);
        assertEquals(303, first.statusCode());
        assertEquals(first.headers().firstValue("Location"), second.headers().firstValue("Location"));
        assertEquals(1, entries(job));
        entry[9] = "13.50";
        assertEquals(422, post(books + "/entries", entry).statusCode(), "the key stands for another form");
        entry[9] = "x";
        entry[1] = "k-2";
        assertEquals(422, post(books + "/entries", entry).statusCode());
        entry[9] = "14.50";
        assertEquals(303, post(books + "/entries", entry).statusCode(), "a refusal keeps no key");
        assertEquals(2, entries(job));
    }

    private int entries(long job) {
        return served.get("/api/jobs/" + job + "/book-entries?limit=200")
                .json()
                .get("items")
                .size();
    }

    @Test
    void anEntryIsSplitAndTheCalendarSet() {
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        String books = "/books/" + job;
        HttpResponse<String> split = post(
                books + "/entries",
                "/kind",
                "actual",
                "/date",
                "2027-04-20",
                "/description",
                "carriage",
                "/net",
                "10.00",
                "/parts/0/costCode",
                "710",
                "/parts/0/weight",
                "1",
                "/parts/2/costCode",
                "720",
                "/parts/2/weight",
                "2");
        assertEquals(303, split.statusCode(), split.body());
        var items = served.get("/api/jobs/" + job + "/book-entries").json().get("items");
        assertEquals("3.33", items.get(0).get("net").asString());
        assertEquals("6.67", items.get(1).get("net").asString());
        assertEquals(
                422,
                post(books + "/calendar", "version", "0", "/firstDay", "2027-04-01", "/ends", "soon")
                        .statusCode());
        assertEquals(
                303,
                post(books + "/calendar", "version", "0", "/firstDay", "2027-04-01", "/ends", "2027-04-15\n2027-04-30")
                        .statusCode());
        assertTrue(page(books + "/periods").contains("periods of the production"));
        assertEquals(303, post(books + "/close", "lastDay", "2027-04-30").statusCode());
    }

    @Test
    void aForeignInvoiceIsPaidAtTheRateOfTheDay() {
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        long invoice = served.post("/api/jobs/" + job + "/invoices", """
                        {"supplier": "Far Freight", "number": "F-1", "date": "2027-04-20", "currency": "JPY",
                          "exchange": {"rate": "0.0062", "source": "the bank's list"},
                          "lines": [{"description": "a crate", "net": "10000", "explanation": "by telephone"}]}""").id();
        String page = "/books/invoices/" + invoice;
        assertTrue(page(page).contains("Keep the payment"));
        assertEquals(
                422,
                post(page + "/payments", "/date", "2027-05-01", "/amount", "10000")
                        .statusCode());
        HttpResponse<String> paid = post(
                page + "/payments",
                "/date",
                "2027-05-01",
                "/amount",
                "10000",
                "/exchange/rate",
                "0.0065",
                "/exchange/source",
                "the bank's list");
        assertEquals(303, paid.statusCode(), paid.body());
        assertTrue(page(page).contains("It is paid"));
        assertTrue(page(page).contains("3.00"), "what the rate of the day made it dearer");
    }

    @Test
    void layoutsOrdersAndGearHavePages() {
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        String books = "/books/" + job;
        assertTrue(page("/books/layouts").contains("Make the first"));
        HttpResponse<String> wrong = post("/books/layouts/new", "/name", "Office", "/columns", "date\ndat = Day");
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("is no column"), wrong.body());
        assertEquals(
                303,
                post(
                                "/books/layouts/new",
                                "/name",
                                "Office",
                                "/columns",
                                "date\nbase net = Amount",
                                "/codes",
                                "710 = 9")
                        .statusCode());
        assertTrue(page("/books/layouts/1").contains("base net = Amount"));

        String table = "date,supplier,description,net\n2027-04-01,Quay House,40 mm,9.00\n";
        assertTrue(post(books + "/orders", "/text", table, "do", "look").body().contains("id=\"looked\""));
        assertTrue(page(books + "/orders").contains("Nothing is ordered"));
        HttpResponse<String> bad = post(books + "/orders", "/text", table + "soon,,,\n", "do", "bring");
        assertEquals(422, bad.statusCode());
        assertTrue(bad.body().contains("Line 3, date: "), bad.body());
        assertEquals(303, post(books + "/orders", "/text", table, "do", "bring").statusCode());
        assertTrue(page(books + "/orders").contains("Quay House"));
        assertTrue(page(books + "/entries").contains(">Office</option>"));

        long unit = served.post("/api/units", "{\"tag\": \"Q-1\"}").id();
        HttpResponse<String> added = post(
                books + "/gear",
                "/unitId",
                unit + "",
                "/price",
                "3650.00",
                "/inService",
                "2027-01-01",
                "/depreciation/method",
                "straight line",
                "/depreciation/years",
                "10");
        assertEquals(303, added.statusCode(), added.body());
        assertEquals(422, post(books + "/depreciation", "/through", "then").statusCode());
        assertEquals(
                303, post(books + "/depreciation", "/through", "2027-01-31").statusCode());
        assertTrue(page(books + "/gear").contains("31.00"));
        String gear = added.headers().firstValue("Location").orElseThrow();
        assertEquals(
                303,
                post(gear + "/disposal", "/date", "2027-02-01", "/net", "10.00", "/description", "sold")
                        .statusCode());
        assertTrue(page(gear).contains("It is gone."));
    }
}
