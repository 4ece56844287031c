package dayglass.web.api.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exports as the user lays them out. */
class ExportLayoutTest {
    private static final String LAYOUT = """
            {"name": "Office", "columns": [{"column": "date"}, {"column": "cost code", "heading": "Account"},
              {"column": "base net", "heading": "Amount, net"}, {"column": "cost code", "heading": "Second account"}],
              "codes": {"2340": "7100"}}""";

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Served served;

    private String entries = "";

    @BeforeEach
    void serve() {
        served = Served.in(folder);
        long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                .id();
        entries = "/api/jobs/" + job + "/book-entries";
        post("2340", "12.50");
        post("2350", "-1.00");
        served.post("/api/jobs/" + job + "/periods/close", "{\"lastDay\": \"2027-04-11\"}");
    }

    private void post(String code, String net) {
        Reply posted = served.post(
                entries,
                "{\"kind\": \"actual\", \"date\": \"2027-04-05\", \"description\": \"taxi\", \"costCode\": \"" + code
                        + "\", \"net\": \"" + net + "\"}");
        assertEquals(201, posted.status(), posted.text());
    }

    @AfterEach
    void stop() {
        served.close();
    }

    @Test
    void anExportHasTheColumnsHeadingsAndCodesOfItsLayout() {
        long layout = served.post("/api/export-layouts", LAYOUT).id();
        String csv = served.get(entries + ".csv?layout=" + layout).text();
        assertEquals(
                "date,Account,\"Amount, net\",Second account\r\n2027-04-05,7100,12.50,7100\r\n2027-04-05,2350,-1.00,2350\r\n",
                csv);
        Reply control = served.get(entries + "-control.json?layout=" + layout);
        assertEquals("Office", control.json().get("layout").asString());
        Reply json = served.get(entries + ".json?layout=" + layout);
        assertEquals("12.50", json.json().at("/entries/0/Amount, net").asString());
        assertEquals(200, served.get(entries + ".xlsx?layout=" + layout).status());
        assertFalse(served.get(entries + "-control.json?layout=").json().has("layout"), "empty is none");
        assertEquals(400, served.get(entries + ".csv?layout=99").status());
    }

    @Test
    void aClosedPeriodInTheSameLayoutGivesTheSameBytes() {
        long layout = served.post("/api/export-layouts", LAYOUT).id();
        String week = "?from=2027-04-05&until=2027-04-11&layout=" + layout;
        List<String> endings = List.of(".csv", ".xlsx", ".json", "-control.json");
        List<String> before = endings.stream()
                .map(ending -> served.get(entries + ending + week).text())
                .toList();
        Reply later = served.post(
                entries, "{\"kind\": \"actual\", \"date\": \"2027-04-12\", \"description\": \"x\", \"net\": \"1.00\"}");
        assertEquals(201, later.status(), later.text());
        assertEquals(
                before,
                endings.stream()
                        .map(ending -> served.get(entries + ending + week).text())
                        .toList());
    }

    @Test
    void aLayoutHoldsNoFormulaAndNoHeadingTwice() {
        assertTrue(refusal("[{\"column\": \"dat\"}]").contains("no column of an export"));
        assertTrue(refusal("[{\"column\": \"date\", \"heading\": \"=1+2\"}]").contains("would run"));
        assertTrue(refusal("[{\"column\": \"date\", \"heading\": \"@a\"}]").contains("would run"));
        assertTrue(refusal("[{\"column\": \"date\"}, {\"column\": \"kind\", \"heading\": \"date\"}]")
                .contains("heads an earlier column"));
        assertTrue(refusal("[]").contains("/columns"));
        assertEquals(201, served.post("/api/export-layouts", LAYOUT).status());
        assertEquals(409, served.post("/api/export-layouts", LAYOUT).status());
    }

    private String refusal(String columns) {
        Reply refused = served.post("/api/export-layouts", "{\"name\": \"x\", \"columns\": " + columns + "}");
        assertEquals(400, refused.status(), refused.text());
        return refused.text();
    }
}
