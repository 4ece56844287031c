package dayglass.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages without a browser: what is answered to whom, and what becomes of bad input. */
class PagesOverHttpTest {
    private static final String HTML = "text/html,application/xhtml+xml";

    private final HttpClient client = HttpClient.newHttpClient();

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private RunningHouse house;

    @BeforeEach
    void start() {
        house = new RunningHouse(folder);
    }

    @AfterEach
    void stop() {
        house.close();
    }

    private HttpResponse<String> get(String path, String accept) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(house.address(path)))
                .header("Accept", accept)
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> send(String path, Map<String, String> form) throws Exception {
        List<String> pairs = new ArrayList<>();
        form.forEach((name, value) -> pairs.add(URLEncoder.encode(name, StandardCharsets.UTF_8) + "="
                + URLEncoder.encode(value, StandardCharsets.UTF_8)));
        HttpRequest request = HttpRequest.newBuilder(URI.create(house.address(path)))
                .header("Accept", HTML)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs)))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static String contentType(HttpResponse<String> response) {
        return response.headers().firstValue("Content-Type").orElse("");
    }

    private void makeJob(String name) throws Exception {
        HttpResponse<String> made =
                send("/jobs", Map.of("name", name, "currency", "EUR", "firstDay", "2027-06-07", "slot", "35 mm"));
        assertEquals(303, made.statusCode());
    }

    @Test
    void whatIsNotThereIsAPageForBrowsersAndADocumentForPrograms() throws Exception {
        for (String path : List.of("/nothing", "/jobs/7", "/jobs/seven", "/costings/1", "/shelf/0", "/runs/3")) {
            HttpResponse<String> page = get(path, HTML);
            assertEquals(404, page.statusCode(), path);
            assertTrue(contentType(page).startsWith("text/html"), path);
            HttpResponse<String> document = get(path, "application/json");
            assertEquals(404, document.statusCode(), path);
            assertEquals("application/problem+json", contentType(document), path);
        }
    }

    @Test
    void everyPageForbidsWhatIsNotItsOwn() throws Exception {
        makeJob("Long Pier");
        for (String path : List.of("/", "/jobs/1", "/shelf", "/desk", "/nothing")) {
            HttpResponse<String> page = get(path, HTML);
            String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
            assertTrue(policy.contains("default-src 'none'"), path);
            assertFalse(policy.contains("unsafe"), path);
            assertFalse(
                    Pattern.compile("<script(?![^>]* src=\"/static/)")
                            .matcher(page.body())
                            .find(),
                    path);
            assertFalse(
                    Pattern.compile(" (style|on[a-z]+)=\"").matcher(page.body()).find(), path);
        }
    }

    @Test
    void whatAUserTypesIsShownAndNeverRun() throws Exception {
        makeJob("<script>alert('pier')</script>");
        String page = get("/jobs/1", HTML).body();
        assertTrue(page.contains("&lt;script>alert("), "the name is shown");
        assertFalse(page.contains("<script>alert("), "the name is not run");
    }

    @Test
    void aFaultyFieldIsToldAndWhatWasTypedIsKept() throws Exception {
        HttpResponse<String> answer = send(
                "/jobs", Map.of("name", "Long Pier", "currency", "EURO", "firstDay", "2027-02-30", "slot", "35 mm"));
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("id=\"f-currency-fault\""), "the currency is told");
        assertTrue(answer.body().contains("id=\"f-firstDay-fault\""), "the day is told");
        assertFalse(answer.body().contains("id=\"f-name-fault\""), "the name is good");
        assertTrue(answer.body().contains("value=\"EURO\""), "what was typed is kept");
        assertTrue(get("/", HTML).body().contains("Nothing is costed yet"), "nothing was made");
    }

    @Test
    void aChangeBasedOnAnOldVersionIsRefused() throws Exception {
        makeJob("Long Pier");
        Map<String, String> terms = Map.of("version", "1", "name", "Short Pier", "discountRatePercent", "0");
        assertEquals(303, send("/jobs/1/terms", terms).statusCode());
        HttpResponse<String> second =
                send("/jobs/1/terms", Map.of("version", "1", "name", "No Pier", "discountRatePercent", "0"));
        assertEquals(422, second.statusCode());
        assertTrue(second.body().contains("Nothing was changed."));
        assertFalse(get("/", HTML).body().contains("No Pier"), "the first change stands");
    }

    @Test
    void aRateIsEnteredOnTheDeskAndPricesAJob() throws Exception {
        makeJob("Long Pier");
        send("/desk/suppliers", Map.of("name", "Ostler Glass"));
        send("/desk/suppliers/1/cards", Map.of("name", "Primes", "currency", "EUR", "effectiveFrom", "2027-01-01"));
        HttpResponse<String> faulty = send(
                "/desk/cards/1/rates/1",
                Map.of("version", "1", "/id", "pier prime", "/blocks/1/days", "1", "/blocks/1/price", "1,00"));
        assertEquals(422, faulty.statusCode());
        assertTrue(faulty.body().contains("id=\"f--blocks-0-price-fault\""), "the price is told");
        HttpResponse<String> kept = send(
                "/desk/cards/1/rates/1",
                Map.of(
                        "version", "1",
                        "/id", "pier prime",
                        "/covers/0/slot", "35 mm",
                        "/covers/0/count", "1",
                        "/blocks/1/days", "1",
                        "/blocks/1/price", "120.00",
                        "/addOns/0/name", "sales tax",
                        "/addOns/0/percent", "10",
                        "/addOns/0/on", "hire, trip"));
        assertEquals(303, kept.statusCode());
        HttpResponse<String> costed = send("/jobs/1/consider", Map.of("version", "1", "other", "card/1"));
        String place = costed.headers().firstValue("Location").orElse("");
        if (place.startsWith("/runs/")) { // a busy machine took more than a second
            awaitEndOf(place);
            place = get(place, HTML).headers().firstValue("Location").orElse("");
        }
        assertEquals("/jobs/1", place);
        // One shoot day at 120.00 and a tenth of it in tax.
        assertTrue(get("/jobs/1", HTML).body().contains("id=\"total-now\">132.00"), "the job is costed");
        String lines =
                get("/costings/1/lines.csv?code%2Fpier+prime=4410", "text/csv").body();
        assertTrue(lines.contains("4410"), "the cost code typed stands in the lines");
    }

    @Test
    void aJobThatCannotBeCoveredSaysWhatIsShort() throws Exception {
        makeJob("Long Pier");
        HttpResponse<String> costed = send("/jobs/1/cost", Map.of());
        String run = costed.headers().firstValue("Location").orElse("");
        assertTrue(run.startsWith("/runs/"), run);
        awaitEndOf(run);
        String page = get(run, HTML).body();
        assertTrue(page.contains("35 mm: Mon 7 Jun 2027 (1 short)"), page);
    }

    @Test
    void daysThatWerePaintedOnAnOldVersionAreRefusedAndStayPainted() throws Exception {
        makeJob("Long Pier");
        Map<String, String> terms = Map.of("version", "1", "name", "Short Pier", "discountRatePercent", "0");
        assertEquals(303, send("/jobs/1/terms", terms).statusCode());
        String days = "[{\"from\":\"2027-06-07\",\"use\":\"shoot\"},{\"from\":\"2027-06-08\",\"use\":\"travel\"}]";
        HttpResponse<String> refused = send("/jobs/1/schedule", Map.of("version", "1", "schedule", days));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("data-date=\"2027-06-08\" data-use=\"travel\""), "the day is still painted");
        assertTrue(refused.body().contains("data-unsaved"), "and can be saved");
        assertFalse(get("/jobs/1", HTML).body().contains("data-use=\"travel\""), "nothing was kept");
    }

    @Test
    void aFormThatDoesNotHoldTogetherIsRefused() throws Exception {
        HttpRequest broken = HttpRequest.newBuilder(URI.create(house.address("/desk/suppliers")))
                .header("Content-Type", "multipart/form-data; boundary=x")
                .POST(HttpRequest.BodyPublishers.ofString("{}"))
                .build();
        assertEquals(
                400, client.send(broken, HttpResponse.BodyHandlers.ofString()).statusCode());
    }

    @ParameterizedTest
    @CsvSource({
        "application/x-www-form-urlencoded, name=Ost%FFler",
        "application/x-www-form-urlencoded, name=Ost%C3",
        "application/x-www-form-urlencoded, n%E4me=Ostler",
        "application/x-www-form-urlencoded, name=Ost\u00FFler",
        "application/x-www-form-urlencoded, name=Ost%zzler",
        "application/x-www-form-urlencoded; charset=iso-8859-1, name=Ost%E4ler"
    })
    // The body's characters are its bytes.
    void aFormThatIsNoUtf8IsRefused(String type, String body) throws Exception {
        HttpRequest broken = HttpRequest.newBuilder(URI.create(house.address("/desk/suppliers")))
                .header("Content-Type", type)
                .header("Accept", HTML)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.getBytes(StandardCharsets.ISO_8859_1)))
                .build();
        HttpResponse<String> refused = client.send(broken, HttpResponse.BodyHandlers.ofString());
        assertEquals(400, refused.statusCode());
        assertTrue(refused.body().contains("UTF-8"), refused.body());
        assertFalse(get("/desk", HTML).body().contains("\uFFFD"), "nothing was stored");
    }

    @Test
    void aPartOfAFormThatIsNoUtf8IsRefused() throws Exception {
        String body = "--x\r\nContent-Disposition: form-data; name=\"text\"\r\n\r\n{\"job\": \"\u00FF\"}\r\n--x--\r\n";
        HttpRequest broken = HttpRequest.newBuilder(URI.create(house.address("/jobs/import")))
                .header("Content-Type", "multipart/form-data; boundary=x")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.getBytes(StandardCharsets.ISO_8859_1)))
                .build();
        HttpResponse<String> refused = client.send(broken, HttpResponse.BodyHandlers.ofString());
        assertEquals(400, refused.statusCode());
        assertTrue(refused.body().contains("UTF-8"), refused.body());
    }

    @Test
    void lettersBeyondAsciiArriveInAForm() throws Exception {
        assertEquals(
                303,
                send("/desk/suppliers", Map.of("name", "Öst & \u0141\uD83D\uDCF7"))
                        .statusCode());
        assertTrue(get("/desk", HTML).body().contains("Öst &amp; \u0141\uD83D\uDCF7"));
    }

    @Test
    void anUnknownCostCodeIsToldToEachInTheirForm() throws Exception {
        costedJob();
        String address = "/costings/1/lines.csv?code%2Fnobody=4410";
        HttpResponse<String> page = get(address, HTML);
        assertEquals(422, page.statusCode());
        assertTrue(contentType(page).startsWith("text/html"));
        for (String accept : List.of("text/csv", "*/*", "application/json")) {
            HttpResponse<String> document = get(address, accept);
            assertEquals(400, document.statusCode());
            assertEquals("application/problem+json", contentType(document));
            assertTrue(document.body().contains("\"code/nobody\""), document.body());
        }
    }

    private static final Pattern FAULT = Pattern.compile("id=\"f-([^\"]*)-fault\">([^<]*)<");

    /** The faults that a page shows, each as its field and what is said of it. */
    private static Map<String, String> faults(HttpResponse<String> page) {
        assertEquals(422, page.statusCode(), page.body());
        Map<String, String> faults = new TreeMap<>();
        FAULT.matcher(page.body())
                .results()
                .forEach(found -> faults.put(found.group(1), found.group(2).replace("&#39;", "'")));
        return faults;
    }

    private void makeCard() throws Exception {
        send("/desk/suppliers", Map.of("name", "Ostler Glass"));
        send("/desk/suppliers/1/cards", Map.of("name", "Primes", "currency", "EUR", "effectiveFrom", "2027-01-01"));
    }

    @Test
    void aRateWithNothingInItIsToldAtItsFieldsInWordsForPeople() throws Exception {
        makeCard();
        Map<String, String> blank = new LinkedHashMap<>();
        for (String field : List.of("/id", "/covers/0/slot", "/covers/0/count", "/blocks/0/days", "/blocks/0/price")) {
            blank.put(field, "");
        }
        blank.put("version", "1");
        assertEquals(
                Map.of("-id", "fill this in", "-covers-0-slot", "fill this in", "-blocks-0-days", "fill this in"),
                faults(send("/desk/cards/1/rates/1", blank)));
    }

    @Test
    void aFaultyRateIsToldInWordsForPeople() throws Exception {
        makeCard();
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("version", "1");
        typed.put("/id", "pier prime");
        typed.put("/copies", "two");
        typed.put("/covers/0/slot", "35 mm");
        typed.put("/covers/0/count", "1");
        typed.put("/covers/1/slot", "50 mm");
        typed.put("/covers/1/count", "many");
        typed.put("/blocks/0/days", "1");
        typed.put("/blocks/0/price", "1,00");
        typed.put("/blocks/1/days", "");
        typed.put("/blocks/1/price", "300");
        assertEquals(
                Map.of(
                        "-copies", "must be a whole number from 1 to 20, such as 1",
                        "-covers-1-count", "must be a whole number from 1 to 100, such as 1",
                        "-blocks-0-price",
                                "must be a number such as 120.00: write a point, not a comma, and no separators",
                        "-blocks-1-days", "fill this in"),
                faults(send("/desk/cards/1/rates/1", typed)));
    }

    @Test
    void aSlotThatAnOfferServesTwiceIsToldAtTheSecond() throws Exception {
        send("/desk/suppliers", Map.of("name", "Ostler Glass"));
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("/id", "buy 35");
        typed.put("currency", "eur");
        typed.put("/covers/0/slot", "35 mm");
        typed.put("/covers/0/count", "1");
        typed.put("/covers/1/slot", "35 mm");
        typed.put("/covers/1/count", "2");
        typed.put("/price", "");
        typed.put("/termMonths", "0");
        typed.put("/resale/lossPercentPerYear", "9");
        typed.put("/resale/points/0/months", "12");
        typed.put("/resale/points/0/value", "800");
        Map<String, String> faults = faults(send("/desk/suppliers/1/offers/new", typed));
        assertEquals(
                Set.of("currency", "-covers-1-slot", "-price", "-termMonths", "-resale-lossPercentPerYear"),
                faults.keySet());
        assertEquals("this slot is given twice: keep one", faults.get("-covers-1-slot"));
        assertEquals(
                "give the loss a year or the values at months, not both", faults.get("-resale-lossPercentPerYear"));
    }

    @Test
    void aRefusedCardKeepsWhatWasTypedAndIsToldAllItsFaults() throws Exception {
        send("/desk/suppliers", Map.of("name", "Ostler Glass"));
        send("/desk/suppliers", Map.of("name", "Other Glass"));
        HttpResponse<String> refused = send(
                "/desk/suppliers/2/cards",
                Map.of("name", "Primes of spring", "currency", "EURO", "effectiveFrom", "2027-02-30"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("value=\"Primes of spring\""), refused.body());
        assertTrue(refused.body().contains("value=\"EURO\""));
        assertTrue(refused.body().contains("id=\"card-currency-2-fault\""));
        assertTrue(refused.body().contains("id=\"card-from-2-fault\""));
        assertFalse(refused.body().contains("id=\"card-currency-1-fault\""), "the other supplier's form is its own");
        makeCard();
        HttpResponse<String> again = send(
                "/desk/suppliers/1/cards", Map.of("name", "Primes", "currency", "EUR", "effectiveFrom", "2027-01-01"));
        assertEquals(422, again.statusCode());
        assertTrue(again.body().contains("already begins on 2027-01-01"), again.body());
    }

    @Test
    void theAddressOfAFormLeadsToItsPage() throws Exception {
        costedJob();
        send("/desk/suppliers/1/cards", Map.of("name", "Primes", "currency", "EUR", "effectiveFrom", "2027-01-01"));
        Map<String, String> pages = new LinkedHashMap<>();
        for (String form : List.of(
                "schedule", "needs", "needs/1/remove", "options", "consider", "drop", "terms", "cost", "copy")) {
            pages.put("/jobs/1/" + form, "/jobs/1");
        }
        pages.put("/jobs", "/");
        pages.put("/jobs/import", "/");
        pages.put("/desk/suppliers", "/desk");
        pages.put("/desk/suppliers/1/cards", "/desk");
        pages.put("/desk/cards/1/successor", "/desk/cards/1");
        pages.put("/desk/cards/1/rates/1/remove", "/desk/cards/1/rates/1");
        pages.put("/runs/1/stop", "/runs/1");
        for (Map.Entry<String, String> page : pages.entrySet()) {
            HttpResponse<String> answer = get(page.getKey(), HTML);
            assertEquals(303, answer.statusCode(), page.getKey());
            assertEquals(
                    page.getValue(), answer.headers().firstValue("Location").orElse(""), page.getKey());
        }
    }

    @Test
    void aMethodThatIsNotKnownIsToldInWholeWords() throws Exception {
        HttpRequest put = HttpRequest.newBuilder(URI.create(house.address("/desk")))
                .header("Accept", HTML)
                .PUT(HttpRequest.BodyPublishers.noBody())
                .build();
        HttpResponse<String> answer = client.send(put, HttpResponse.BodyHandlers.ofString());
        assertEquals(405, answer.statusCode());
        assertEquals("GET, HEAD", answer.headers().firstValue("Allow").orElse(""));
        assertTrue(answer.body().contains("can be done to /desk: GET, HEAD."), answer.body());
    }

    @Test
    void whatIsPricedInAnotherCurrencyIsNotOffered() throws Exception {
        makeJob("Long Pier");
        send("/desk/suppliers", Map.of("name", "Ostler Glass"));
        send("/desk/suppliers/1/cards", Map.of("name", "Primes", "currency", "EUR", "effectiveFrom", "2027-01-01"));
        send("/desk/suppliers/1/cards", Map.of("name", "Far ones", "currency", "USD", "effectiveFrom", "2027-01-01"));
        String page = get("/jobs/1", HTML).body();
        assertTrue(page.contains("value=\"card/1\""));
        assertFalse(page.contains("value=\"card/2\""));
        HttpResponse<String> refused = send("/jobs/1/consider", Map.of("version", "1", "other", "card/2"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("rate card 2 (Far ones) is in USD and the job in EUR"), refused.body());
    }

    @Test
    void costCodesAreKeptWithTheJobForEveryBrowser() throws Exception {
        costedJob();
        HttpResponse<String> kept = send("/costings/1/codes", Map.of("version", "0", "code/pier prime", "4410"));
        assertEquals(303, kept.statusCode(), kept.body());
        assertEquals("/costings/1#books", kept.headers().firstValue("Location").orElse(""));
        assertTrue(get("/costings/1", HTML).body().contains("value=\"4410\""), "another browser sees the code");
        assertTrue(get("/costings/1/lines.csv", "text/csv").body().contains("4410"), "the lines bear it");
        String once =
                get("/costings/1/lines.csv?code%2Fpier+prime=77", "text/csv").body();
        assertTrue(once.contains("77") && !once.contains("4410"), "an address may say otherwise for once");
        HttpResponse<String> late = send("/costings/1/codes", Map.of("version", "0", "code/pier prime", "5"));
        assertEquals(422, late.statusCode());
        assertTrue(late.body().contains("value=\"5\""), "what was typed is kept");
        HttpResponse<String> faulty =
                send("/costings/1/codes", Map.of("version", "1", "code/pier prime", "7".repeat(201)));
        assertEquals(Set.of("code-pier-prime"), faults(faulty).keySet());
        assertEquals(
                303,
                send("/costings/1/codes", Map.of("version", "1", "code/pier prime", ""))
                        .statusCode());
        assertFalse(get("/costings/1/lines.csv", "text/csv").body().contains("4410"), "and can be taken back");
    }

    @Test
    void whatIsConsideredAlreadyStaysWhenItIsChosenOnceMore() throws Exception {
        makeJob("Long Pier");
        makeCard();
        assertEquals(
                303,
                send("/jobs/1/consider", Map.of("version", "1", "other", "card/1"))
                        .statusCode());
        assertEquals(
                303,
                send("/jobs/1/consider", Map.of("version", "2", "other", "card/1"))
                        .statusCode());
    }

    private void costedJob() throws Exception {
        String request = "{\"job\": \"Long Pier\", \"currency\": \"EUR\","
                + " \"schedule\": [{\"from\": \"2027-06-07\", \"use\": \"shoot\"}],"
                + " \"needs\": [{\"slot\": \"35 mm\", \"count\": 1}],"
                + " \"rentals\": [{\"id\": \"pier prime\", \"supplier\": \"Ostler Glass\","
                + " \"covers\": {\"35 mm\": 1}, \"blocks\": [{\"days\": 1, \"price\": \"100.00\"}]}]}";
        assertEquals(303, send("/jobs/import", Map.of("text", request)).statusCode());
        String run =
                send("/jobs/1/cost", Map.of()).headers().firstValue("Location").orElse("");
        if (run.startsWith("/runs/")) {
            awaitEndOf(run);
        }
    }

    private void awaitEndOf(String run) throws Exception {
        for (int tries = 0; tries < 100; tries++) {
            if (get(run + "/state", "application/json").body().replace(" ", "").contains("\"over\":true")) {
                return;
            }
            Thread.sleep(100);
        }
        throw new AssertionError(run + " does not end");
    }
}
