package dayglass.web.api.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** A job's brief, its ways and their sheet, over HTTP; the job's costs are worked out by hand. */
class OptionsSheetApiTest extends OneServer {
    /** Two shoot days, a dark day, a shoot day; 40 mm on all three, 100 mm on the last. */
    private static final String REQUEST = """
            {"job": "Salt Road", "currency": "EUR", "cashLimit": "9000.00",
             "schedule": [{"from": "2027-04-05", "to": "2027-04-06", "use": "shoot"},
                          {"from": "2027-04-08", "use": "shoot"}],
             "needs": [{"slot": "40 mm", "count": 1, "on": ["shoot"]},
                       {"slot": "100 mm", "count": 1, "dates": [{"from": "2027-04-08"}]}],
             "rentals": [
               {"id": "forty", "supplier": "Quay Hire", "covers": {"40 mm": 1}, "blocks": [{"days": 1, "price": "100.00"}]},
               {"id": "hundred", "supplier": "Quay Hire", "covers": {"100 mm": 1}, "blocks": [{"days": 1, "price": "70.00"}]}],
             "purchases": [
               {"id": "buy-forty", "supplier": "Quay Hire", "covers": {"40 mm": 1}, "price": "1000.00", "termMonths": 12,
                "resale": {"points": [{"months": 12, "value": "500.00"}]}}],
             "owned": []}""";

    private static final String BRIEF = """
            {"picture": {"camera": {"width": "24.89", "height": "18.66", "mount": "PL"}, "delivery": {"aspect": "2.39"}},
             "squeeze": "2", "looks": {"flare": {"grade": 4, "weight": "2"}, "colour": {"grade": 3}},
             "budget": {"amount": "450.00", "currency": "EUR"}}""";

    private static int made;

    private long job;
    private long card;
    private long offer;
    private long lens;

    @BeforeEach
    void importJob() {
        made++;
        Reply imported = served.post("/api/jobs/import", REQUEST.replace("Quay Hire", "Quay Hire " + made));
        assertEquals(201, imported.status(), imported.text());
        job = imported.id();
        card = imported.json().at("/rateCards/0").asLong();
        offer = imported.json().at("/purchaseOffers/0").asLong();
        lens = model("Forty " + made, "40", "34", "{\"flare\": 3, \"colour\": 3}");
    }

    private static long model(String name, String focal, String circle, String look) {
        Reply model = served.post("/api/lens-models", """
                {"maker": "Vellum", "name": "%s", "kind": "anamorphic prime", "focal": "%s", "tStop": "2.8", "squeeze": "2",
                 "imageCircle": "%s", "mounts": ["PL"], "look": %s}""".formatted(name, focal, circle, look));
        assertEquals(201, model.status(), model.text());
        return model.id();
    }

    private String brief() {
        return "/api/jobs/" + job + "/brief";
    }

    private void keepBrief() {
        Reply kept = served.put(brief(), BRIEF, "If-Match", "\"0\"");
        assertEquals(200, kept.status(), kept.text());
    }

    private Reply add(String name, String pieces) {
        return served.post(
                "/api/ways", "{\"jobId\": " + job + ", \"name\": \"" + name + "\", \"pieces\": " + pieces + "}");
    }

    private String rented(String glass) {
        return "[{\"rateCard\": " + card + ", \"rate\": \"forty\"" + glass + "}]";
    }

    private String glass(long model) {
        return ", \"glass\": [{\"lensModel\": " + model + "}]";
    }

    private JsonNode sheet() throws InterruptedException {
        Reply started = served.post("/api/jobs/" + job + "/options-sheets", "{}");
        assertEquals(202, started.status(), started.text());
        String address = started.header("Location").orElseThrow();
        Reply now = served.get(address);
        for (int tries = 0; !now.json().get("done").asBoolean() && tries < 200; tries++) {
            Thread.sleep(50);
            now = served.get(address);
        }
        assertTrue(now.json().get("done").asBoolean(), now.text());
        return now.json();
    }

    @Test
    void aBriefIsKeptByVersion() {
        assertEquals("\"0\"", served.get(brief()).etag());
        assertEquals(428, served.put(brief(), BRIEF).status());
        keepBrief();
        Reply kept = served.get(brief());
        assertEquals("\"1\"", kept.etag());
        assertEquals("10", kept.json().get("tolerancePercent").asString());
        assertEquals("1", kept.json().at("/looks/colour/weight").asString());
        assertEquals(412, served.put(brief(), BRIEF, "If-Match", "\"0\"").status());
        assertEquals(404, served.get("/api/jobs/99999/brief").status());
    }

    @ParameterizedTest
    @CsvSource({
        "'\"mount\": \"PL\"', '\"mount\": \"Nowhere\"', /picture/camera/mount",
        "'\"EUR\"', '\"USD\"', /budget/currency",
        "'\"grade\": 4', '\"grade\": 6', /looks/flare/grade",
        "'\"2.39\"', '\"6\"', /picture/delivery/aspect",
        "'\"squeeze\": \"2\"', '\"squeeze\": \"4\"', /squeeze"
    })
    void whatABriefCannotSayIsAFaultAtItsPlace(String good, String bad, String pointer) {
        Reply refused = served.put(brief(), BRIEF.replace(good, bad), "If-Match", "\"0\"");
        assertEquals(400, refused.status(), refused.text());
        assertEquals(pointer, refused.json().at("/faults/0/pointer").asString());
    }

    @Test
    void aWayIsAddedChangedListedAndRemoved() {
        Reply added = add("Rented", rented(glass(lens)));
        assertEquals(201, added.status(), added.text());
        assertEquals(409, add("Rented", rented("")).status());
        String address = added.header("Location").orElseThrow();
        Reply changed = served.put(
                address,
                "{\"jobId\": " + job + ", \"name\": \"Bought\", \"pieces\": [{\"purchaseOffer\": " + offer + "}]}",
                "If-Match",
                added.etag());
        assertEquals(200, changed.status(), changed.text());
        assertEquals(
                "Bought",
                served.get("/api/jobs/" + job + "/ways")
                        .json()
                        .at("/items/0/name")
                        .asString());
        assertTrue(served.get("/api/ways").json().get("items").size() > 0);
        assertEquals(404, served.get("/api/jobs/99999/ways").status());
        assertEquals(204, served.delete(address, "If-Match", changed.etag()).status());
        assertEquals(404, served.get(address).status());
    }

    @ParameterizedTest
    @CsvSource({
        "'[]', /pieces",
        "'[{}]', /pieces/0",
        "'[{\"unit\": 1, \"lensSet\": 1}]', /pieces/0",
        "'[{\"rateCard\": 1}]', /pieces/0/rate",
        "'[{\"purchaseOffer\": 99999}]', /pieces/0/purchaseOffer",
        "'[{\"unit\": 99999}]', /pieces/0/unit",
        "'[{\"purchaseOffer\": 1}, {\"purchaseOffer\": 1}]', /pieces/1",
        "'[{\"purchaseOffer\": 1, \"glass\": [{\"lensModel\": 99999}]}]', /pieces/0/glass/0/lensModel"
    })
    void whatAWayCannotSayIsAFaultAtItsPlace(String pieces, String pointer) {
        Reply refused = add("Faulty", pieces);
        assertEquals(400, refused.status(), refused.text());
        assertEquals(pointer, refused.json().at("/faults/0/pointer").asString());
    }

    @Test
    void withoutABriefOrWaysThereIsNoSheet() {
        String address = "/api/jobs/" + job + "/options-sheets";
        assertTrue(served.post(address, "{}").text().contains("no brief"));
        keepBrief();
        Reply noWays = served.post(address, "{}");
        assertEquals(422, noWays.status());
        assertTrue(noWays.text().contains("no ways"));
        assertEquals(404, served.post("/api/jobs/99999/options-sheets", "{}").status());
        assertEquals(404, served.get("/api/options-sheets/99999").status());
    }

    /**
     * By hand. 40 mm for three days at 100.00 is 300.00; bought it is 1000.00 less 500.00 resale, 500.00. The 100 mm is
     * not this way's: "hundred" completes it for one day at 70.00. Cash needed 370.00, within 450.00.
     */
    @Test
    void aRowIsCostedByTheEngineAndCompletedByOthers() throws InterruptedException {
        keepBrief();
        add("Either", rented(glass(lens)).replace("]}]", "]}, {\"purchaseOffer\": " + offer + glass(lens) + "}]"));
        JsonNode row = sheet().at("/rows/0");
        assertEquals("370.00", row.get("best").asString(), row.toString());
        assertEquals("370.00", row.get("rented").asString());
        assertEquals("370.00", row.get("byDay").asString());
        assertTrue(row.get("byWeek").isNull());
        assertTrue(row.get("bought").isNull());
        assertEquals("370.00", row.get("cashNeeded").asString());
        assertTrue(row.get("withinBudget").asBoolean());
        assertEquals(
                "[{\"slot\":\"100 mm\",\"days\":1,\"by\":[{\"option\":\"hundred\",\"glass\":[],\"reasons\":[]}]}]",
                row.get("completedBy").toString());
        assertEquals(
                "[{\"option\":\"forty\",\"how\":\"rented\",\"periods\":2,\"days\":3},"
                        + "{\"option\":\"hundred\",\"how\":\"rented\",\"periods\":1,\"days\":1}]",
                row.get("takes").toString());
        // Bought it is 500.00 and the 100 mm, which is rented, 70.00; of the way's own part buying pays from day five.
        assertEquals(
                "{\"total\":\"570.00\",\"cash\":\"1070.00\",\"beyondCashLimit\":false,\"completedByRenting\":true}",
                row.get("ifBought").toString());
        assertEquals(5, row.get("buyingPaysFromShootDays").asInt(), row.toString());
        assertEquals("fits", row.at("/slots/0/verdict").asString());
        assertFalse(row.at("/slots/1").has("verdict"));
        assertTrue(row.at("/slots/1/reasons/0").asString().contains("Nothing within 10 % of 100 mm"));
        // 100 (1 - 2*1 / (4*3)) = 83.33
        assertEquals("83.33", row.get("look").asString());
        Reply costing = served.get("/api/costings/" + row.get("costingId").asLong());
        Reply again = served.post("/api/costings", costing.json().get("request").toString());
        assertEquals("370.00", again.json().get("total").asString());
        assertEquals(
                costing.json().get("requestSha256").asString(),
                again.json().get("requestSha256").asString());
    }

    /** Without the 100 mm: renting three days 300.00, six 600.00; buying 500.00 pays from the fifth shoot day on. */
    @Test
    void buyingPaysFromTheDayOnWhichRentingCostsAsMuch() throws InterruptedException {
        Reply imported = served.post(
                "/api/jobs/import",
                REQUEST.replace("Quay Hire", "Quay Hire " + made)
                        .replace(", \"dates\": [{\"from\": \"2027-04-08\"}]", ", \"on\": [\"prep\"]"));
        job = imported.id();
        keepBrief();
        add("Either", rented(glass(lens)).replace("]}]", "]}, {\"purchaseOffer\": " + offer + glass(lens) + "}]"));
        JsonNode row = sheet().at("/rows/0");
        assertEquals("500.00", row.get("bought").asString(), row.toString());
        assertEquals("300.00", row.get("best").asString());
        assertEquals(5, row.get("buyingPaysFromShootDays").asInt());
    }

    /** Bought it takes 1000.00, which the job has not; what it would come to is told all the same. */
    @Test
    void whatTheCashLimitForbidsIsToldWithItsPrice() throws InterruptedException {
        job = served.post(
                        "/api/jobs/import",
                        REQUEST.replace("Quay Hire", "Quay Hire " + made).replace("9000.00", "900.00"))
                .id();
        keepBrief();
        add("Bought", "[{\"purchaseOffer\": " + offer + glass(lens) + "}]");
        JsonNode row = sheet().at("/rows/0");
        assertTrue(row.get("problem").asString().contains("not with purchases within the cash limit"), row.toString());
        assertFalse(row.has("costingId"));
        assertEquals("EUR", row.get("currency").asString());
        assertEquals(
                "{\"total\":\"570.00\",\"cash\":\"1070.00\",\"beyondCashLimit\":true,\"completedByRenting\":true}",
                row.get("ifBought").toString());
    }

    /** "hundred" brings what the way that names it says. */
    @ParameterizedTest
    @CsvSource({"34, fits", "30, fits with care", "10, "})
    void whatCompletesAWayIsJudgedLikeTheWay(String circle, String verdict) throws InterruptedException {
        keepBrief();
        long hundred = model("Hundred " + circle + " " + made, "100", circle, "{}");
        add("Forty", rented(glass(lens)));
        add("Hundred", rented(glass(hundred)).replace("forty", "hundred"));
        JsonNode row = sheet().at("/rows/0");
        if (verdict == null) {
            assertTrue(
                    row.get("problem").asString().contains("nor the job's other options cover 100 mm on 2027-04-08"),
                    row.toString());
            assertTrue(row.get("remarks").toString().contains("hundred does not complete 100 mm: Vellum Hundred"));
        } else {
            JsonNode by = row.at("/completedBy/0/by/0");
            assertEquals(verdict, by.get("verdict").asString(), row.toString());
            assertEquals(
                    "Vellum Hundred " + circle + " " + made, by.at("/glass/0").asString());
        }
    }

    @Test
    void aStartSentTwiceWithOneKeyIsOneSheet() {
        keepBrief();
        add("Forty", rented(glass(lens)));
        String address = "/api/jobs/" + job + "/options-sheets";
        Reply first = served.post(address, "{}", "Idempotency-Key", "sheet-" + made);
        Reply again = served.post(address, "{}", "Idempotency-Key", "sheet-" + made);
        assertEquals(202, first.status(), first.text());
        assertEquals(202, again.status());
        assertEquals(first.text(), again.text());
        assertEquals(first.header("Location"), again.header("Location"));
        assertEquals(
                422,
                served.post("/api/jobs/99999/options-sheets", "{}", "Idempotency-Key", "sheet-" + made)
                        .status());
        Reply pdf = served.get(first.header("Location").orElseThrow() + "/pdf");
        assertEquals(200, pdf.status());
        assertTrue(pdf.text().startsWith("%PDF-"));
        String paper = first.header("Location").orElseThrow() + "/pdf?paper=";
        assertEquals(200, served.get(paper + "Letter").status());
        assertEquals(400, served.get(paper + "A0").status());
        assertEquals(404, served.get("/api/options-sheets/99999/pdf").status());
        Reply other = served.post(address, "{}", "Idempotency-Key", "other-" + made);
        assertEquals(202, other.status());
        assertTrue(!other.header("Location").equals(first.header("Location")));
    }

    @Test
    void glassThatDoesNotFitServesNothingAndSaysWhy() throws InterruptedException {
        keepBrief();
        long small = model("Small " + made, "40", "10", "{}");
        add("Small", rented(glass(small)));
        JsonNode row = sheet().at("/rows/0");
        assertEquals("does not fit", row.get("verdict").asString());
        assertTrue(row.at("/slots/0/reasons/0").asString().contains("Small " + made), row.toString());
        assertTrue(row.get("problem").asString().contains("nothing to cost"));
        assertFalse(row.has("costingId"));
        assertEquals(List.of(), List.copyOf(row.at("/slots/0/by").valueStream().toList()));
    }

    @Test
    void ofTwoWaysTheOneThatIsDearerAndLooksWorseIsBeaten() throws InterruptedException {
        keepBrief();
        long best = model("Best " + made, "40", "34", "{\"flare\": 4, \"colour\": 3}");
        add("Rented", rented(glass(best)));
        add("Bought", "[{\"purchaseOffer\": " + offer + glass(lens) + "}]");
        JsonNode rows = sheet().get("rows");
        assertEquals("100.00", rows.at("/0/look").asString());
        assertTrue(rows.at("/0/unbeaten").asBoolean());
        assertEquals("570.00", rows.at("/1/best").asString());
        assertFalse(rows.at("/1/withinBudget").asBoolean());
        assertFalse(rows.at("/1/unbeaten").asBoolean());
    }
}
