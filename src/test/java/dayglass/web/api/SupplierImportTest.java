package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.FreshServer;
import dayglass.support.Reply;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** Suppliers come in as a table, all of them or none; every name is invented. */
class SupplierImportTest extends FreshServer {
    private static final String GOOD = "Name;House\r\n\"Quay; House\";no\r\nPier House;YES\r\n;\r\n'=Far Freight;\r\n";

    private Reply bring(String text, boolean preview) {
        String body = "{\"text\": " + JsonMapper.shared().writeValueAsString(text) + "}";
        return served.post("/api/suppliers/import" + (preview ? "?preview=true" : ""), body);
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        served.get("/api/suppliers")
                .json()
                .get("items")
                .forEach(each -> names.add(each.get("name").asString()));
        return names;
    }

    private static List<String> faults(Reply preview) {
        assertEquals(200, preview.status(), preview.text());
        List<String> faults = new ArrayList<>();
        preview.json()
                .get("faulty")
                .forEach(bad -> faults.add(bad.get("line") + "/" + bad.get("column") + " "
                        + bad.get("message").asString()));
        return faults;
    }

    @Test
    void aPreviewKeepsNothingAndTheImportEverySupplier() {
        Reply preview = bring(GOOD, true);
        assertEquals(List.of(), faults(preview));
        assertTrue(preview.json().get("preview").asBoolean());
        assertEquals(List.of(), names());
        Reply done = bring(GOOD, false);
        assertEquals(200, done.status(), done.text());
        assertEquals(preview.json().get("suppliers"), done.json().get("suppliers"));
        assertEquals(3, done.json().at("/suppliers/1/line").asInt());
        assertTrue(done.json().at("/suppliers/1/supplier/house").asBoolean());
        assertEquals(5, done.json().at("/suppliers/2/line").asInt(), "an empty row is passed over");
        assertEquals(List.of("Quay; House", "Pier House", "=Far Freight"), names());
    }

    @Test
    void sentTwiceItAddsNobodyTwice() {
        assertEquals(200, bring(GOOD, false).status());
        Reply again = bring(GOOD, false);
        assertEquals(400, again.status(), again.text());
        assertTrue(again.text().contains("line 2, column 1 (Name): is there already, as supplier 1"), again.text());
        assertEquals(3, names().size());
    }

    @Test
    void everyFaultIsToldByLineAndColumnAndNothingIsHalfDone() {
        assertEquals(
                201,
                served.post("/api/suppliers", "{\"name\": \"Pier House\", \"house\": true}")
                        .status());
        String text = """
                house,name,colour
                ,Quay House,
                ,Quay House,
                yes,Far Freight,
                maybe,North Store,
                ,,red
                ,Pier House,
                ,too few
                ,too,many,fields
                """;
        Reply refused = bring(text, false);
        assertEquals(400, refused.status(), refused.text());
        assertEquals("/text", refused.json().at("/faults/0/pointer").asString());
        assertTrue(refused.text().contains("line 1, column 3 (colour): is no column of a supplier"), refused.text());
        assertEquals(
                List.of(
                        "1/3 is no column of a supplier: rename it or take it out of the table",
                        "3/2 stands in line 2 already: keep one of the two rows",
                        "4/1 is Pier House already: one supplier at most is this house itself",
                        "5/1 must be yes or no",
                        "6/2 is missing: add \"name\"",
                        "7/2 is there already, as supplier 1: take the row out, or change the supplier itself",
                        "8/0 has 2 fields where the heading has 3: check its separators and quotes",
                        "9/0 has 4 fields where the heading has 3: check its separators and quotes"),
                faults(bring(text, true)));
        assertEquals(List.of("Pier House"), names());
    }

    @Test
    void aTableThatSaysNobodyIsRefused() {
        assertEquals(
                List.of("1/0 is all there is: add a row for each supplier below the headings"),
                faults(bring("name", true)));
        assertEquals(400, bring("", true).status());
        assertEquals(400, bring("name\n\"open", true).status());
        assertEquals(
                List.of("1/2 stands in an earlier column already: keep one of the two"),
                faults(bring("name,Supplier\na,b\n", true)));
        assertEquals(List.of("2/0 is missing: add \"name\""), faults(bring("house\nno\n", true)));
        assertEquals(400, served.post("/api/suppliers/import", "{}").status());
    }
}
