package dayglass.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Reply;
import dayglass.support.Served;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** The house's and its suppliers' cards over REST: what they are for, and tables in and out. All rates are invented. */
class RateCardApiTest {
    private static final String BLOCKS = "\"blocks\": [{\"days\": 1, \"price\": \"90.00\"}]";

    @TempDir
    Path folder;

    private Served served;

    @BeforeEach
    void start() {
        served = Served.in(folder);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private long made(String path, String facts) {
        Reply reply = served.post(path, facts);
        assertEquals(201, reply.status(), reply.text());
        return reply.id();
    }

    private long model() {
        return made(
                "/api/lens-models",
                "{\"maker\": \"Marrow\", \"name\": \"Heron 40\", \"kind\": \"spherical prime\", \"focal\": \"40\"}");
    }

    private static String card(long supplier, String rates) {
        return "{\"supplierId\": " + supplier + ", \"name\": \"Singles\", \"currency\": \"EUR\", \"effectiveFrom\":"
                + " \"2027-01-01\", \"rates\": [" + rates + "]}";
    }

    private static String table(long supplier, String text) {
        return "{\"supplierId\": " + supplier + ", \"name\": \"Singles\", \"currency\": \"EUR\", \"effectiveFrom\":"
                + " \"2027-01-01\", \"text\": " + JsonMapper.shared().writeValueAsString(text) + "}";
    }

    private static List<String> pointers(Reply reply) {
        assertEquals(400, reply.status(), reply.text());
        List<String> pointers = new ArrayList<>();
        reply.json()
                .get("faults")
                .forEach(fault -> pointers.add(fault.get("pointer").asString()));
        return pointers;
    }

    @Test
    void oneSupplierAtMostIsThisHouse() {
        long house = made("/api/suppliers", "{\"name\": \"Pier House\", \"house\": true}");
        Reply second = served.post("/api/suppliers", "{\"name\": \"Quay House\", \"house\": true}");
        assertEquals(409, second.status());
        assertEquals("already-there", second.kind());
        assertTrue(second.text().contains("Pier House"), second.text());
        long other = made("/api/suppliers", "{\"name\": \"Quay House\"}");
        String becomes = "{\"name\": \"Quay House\", \"house\": true}";
        assertEquals(
                409,
                served.put("/api/suppliers/" + other, becomes, "If-Match", "*").status());
        assertEquals(
                200,
                served.put("/api/suppliers/" + house, "{\"name\": \"Pier House\"}", "If-Match", "*")
                        .status());
        assertFalse(served.get("/api/suppliers/" + house).json().has("house"), "it is the house no more");
        Reply now = served.put("/api/suppliers/" + other, becomes, "If-Match", "*");
        assertEquals(200, now.status(), now.text());
        assertTrue(now.json().get("house").asBoolean());
        assertEquals(
                400,
                served.post("/api/suppliers", "{\"name\": \"A\", \"house\": \"yes\"}")
                        .status());
    }

    @Test
    void whatARateIsForMustBeThereAndIsNotRemoved() {
        long supplier = made("/api/suppliers", "{\"name\": \"Pier House\"}");
        String ofAModel = "{\"id\": \"h\", \"lets\": {\"model\": 1}, " + BLOCKS + "}";
        String ofASet = "{\"id\": \"s\", \"lets\": {\"set\": 1}, " + BLOCKS + "}";
        String ofAUnit = "{\"id\": \"u\", \"lets\": {\"unit\": 1}, " + BLOCKS + "}";
        assertEquals(
                List.of("/rates/0/lets/model"), pointers(served.post("/api/rate-cards", card(supplier, ofAModel))));
        model();
        assertEquals(
                List.of("/rates/1/lets/set"),
                pointers(served.post("/api/rate-cards", card(supplier, ofAModel + "," + ofASet))));
        made("/api/lens-sets", "{\"name\": \"Herons\", \"members\": []}");
        assertEquals(
                List.of("/rates/1/lets/unit"),
                pointers(served.post("/api/rate-cards", card(supplier, ofASet + "," + ofAUnit))));
        made("/api/units", "{\"tag\": \"H-1\"}");
        made("/api/rate-cards", card(supplier, ofAModel + "," + ofASet + "," + ofAUnit));
        for (String path : List.of("lens-models", "lens-sets", "units")) {
            Reply refused = served.delete("/api/" + path + "/1", "If-Match", "*");
            assertEquals(409, refused.status(), path);
            assertTrue(refused.text().contains("rate card 1"), refused.text());
        }
        assertEquals(
                200,
                served.put("/api/rate-cards/1", card(supplier, ""), "If-Match", "*")
                        .status());
        for (String path : List.of("lens-models", "lens-sets", "units")) {
            assertEquals(
                    204, served.delete("/api/" + path + "/1", "If-Match", "*").status(), path);
        }
    }

    @Test
    void aTableIsLookedAtMadeACardAndComesOutAsItWas() {
        long supplier = made("/api/suppliers", "{\"name\": \"Pier House\", \"house\": true}");
        model();
        String text = String.join(
                "\r\n",
                "id,maker,model,day,week,add-on 1,add-on 1 percent,add-on 1 of,add-on 1 is",
                "heron,Marrow,Heron 40,90.00,270.00,damage cover,12,hire; trip,waiver",
                "");
        Reply preview = served.post("/api/rate-cards/import?preview=true", table(supplier, text));
        assertEquals(200, preview.status(), preview.text());
        assertEquals(2, preview.json().at("/rates/0/line").asInt());
        assertEquals(0, served.get("/api/rate-cards").json().get("items").size(), "a preview keeps nothing");
        Reply made = served.post("/api/rate-cards/import", table(supplier, text));
        assertEquals(201, made.status(), made.text());
        assertEquals("/api/rate-cards/1", made.header("Location").orElseThrow());
        assertEquals(preview.json().at("/rates/0/rate"), made.json().at("/rates/0"));
        assertEquals("waiver", made.json().at("/rates/0/marks/damage cover").asString());
        assertEquals(1, made.json().at("/rates/0/lets/model").asInt());
        assertEquals(
                409,
                served.post("/api/rate-cards/import", table(supplier, text)).status(),
                "sent twice");
        Reply csv = served.get("/api/rate-cards/1/rates.csv");
        assertEquals(200, csv.status());
        Reply again = served.post(
                "/api/rate-cards/import", table(supplier, csv.text()).replace("2027-01-01", "2028-01-01"));
        assertEquals(201, again.status(), again.text());
        assertEquals(made.json().get("rates"), again.json().get("rates"));
        assertEquals(404, served.get("/api/rate-cards/9/rates.csv").status());
    }

    @Test
    void aTableWithAFaultMakesNoCard() {
        long supplier = made("/api/suppliers", "{\"name\": \"Pier House\"}");
        String text = "id;serves;day;colour\r\ngood;40 mm;90.00;\r\nbad;40 mm;90,00;red\r\n";
        Reply preview = served.post("/api/rate-cards/import?preview=true", table(supplier, text));
        assertEquals(200, preview.status(), preview.text());
        assertEquals(1, preview.json().get("rates").size());
        assertEquals(2, preview.json().get("faulty").size(), preview.text());
        Reply refused = served.post("/api/rate-cards/import", table(supplier, text));
        assertEquals(List.of("/text", "/text"), pointers(refused));
        assertTrue(refused.text().contains("line 3, column 3 (day): "), refused.text());
        assertEquals(0, served.get("/api/rate-cards").json().get("items").size());
        assertEquals(
                List.of("/supplierId"),
                pointers(served.post("/api/rate-cards/import", table(9, "id,serves,day\na,b,1"))));
        assertEquals(List.of("/text"), pointers(served.post("/api/rate-cards/import", table(supplier, ""))));
    }

    /** A card that serves no slot adds nothing to a job: what is short stays short. */
    @Test
    void aRateWithoutSlotsServesNoJob() {
        long supplier = made("/api/suppliers", "{\"name\": \"Pier House\", \"house\": true}");
        model();
        String job = "{\"name\": \"Long Pier\", \"currency\": \"EUR\", \"schedule\": [{\"from\": \"2027-06-07\","
                + " \"use\": \"shoot\"}], \"needs\": [{\"slot\": \"35 mm\", \"count\": 1}], \"rateCards\": [1]}";
        made("/api/rate-cards", card(supplier, "{\"id\": \"h\", \"lets\": {\"model\": 1}, " + BLOCKS + "}"));
        made("/api/jobs", job);
        Reply none = served.post("/api/jobs/1/costings", "{}");
        assertEquals(422, none.status(), none.text());
        String serving = "{\"id\": \"h\", \"lets\": {\"model\": 1}, \"covers\": {\"35 mm\": 1}, " + BLOCKS + "}";
        assertEquals(
                200,
                served.put("/api/rate-cards/1", card(supplier, serving), "If-Match", "*")
                        .status());
        Reply costed = served.post("/api/jobs/1/costings", "{}");
        assertEquals(201, costed.status(), costed.text());
        assertTrue(costed.text().contains("\"90.00\""), costed.text());
    }
}
