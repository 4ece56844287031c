package dayglass.web.page.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class VerdictPagesTest extends OneServer {
    private static String address(Map<String, String> changes) {
        Map<String, String> values =
                new LinkedHashMap<>(VerdictForm.first("EUR").values());
        values.put("/uncertainty/draws", "500");
        values.putAll(changes);
        return "/verdict?"
                + values.entrySet().stream()
                        .map(each -> encoded(each.getKey()) + "=" + encoded(each.getValue()))
                        .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static Reply page(String address) throws InterruptedException {
        return weighed(address);
    }

    /** The page once it is weighed, however slow the machine. */
    static Reply weighed(String address) throws InterruptedException {
        Reply reply = served.page(address);
        for (int look = 0; reply.text().contains("<h1>Weighing it</h1>") && look < 600; look++) {
            Thread.sleep(100);
            reply = served.page(address);
        }
        return reply;
    }

    @Test
    void theFormStandsThereWithItsDefaultsAndNothingIsWeighedYet() throws Exception {
        Reply reply = page("/verdict");
        assertEquals(200, reply.status());
        assertTrue(reply.text().contains("value=\"8000\""));
        assertFalse(reply.text().contains("<polyline"));
    }

    @Test
    void theDefaultsAreWeighedWithAllPictures() throws Exception {
        Reply reply = page(address(Map.of()));
        assertEquals(200, reply.status(), reply.text());
        assertTrue(reply.text().contains("less than renting over 36 months"), reply.text());
        assertTrue(reply.text().contains("costs 5\u202f497.88"), reply.text());
        assertEquals(5, reply.text().split("<svg class=\"chart\"", -1).length - 1);
        assertTrue(reply.text().contains("class=\"crossing\""));
        for (String working : new String[] {
            "Owning a year and a day",
            "commercials, the rent of one job",
            "Both costs on either side",
            "Averages and regret",
            "The draws by what owning saved",
            "What is saved as one input alone moves"
        }) {
            assertTrue(reply.text().contains("<summary>" + working), working);
        }
        assertTrue(reply.text().contains("no tax, legal or insurance advice"));
        assertFalse(reply.text().contains("NaN"));
    }

    @Test
    void aFaultStandsBesideItsFieldAndWhatWasTypedIsKept() throws Exception {
        Reply reply = page(address(Map.of("/purchase/price", "8,000", "/jobs/0/perYearHigh", "2")));
        assertEquals(422, reply.status());
        assertTrue(reply.text().contains("value=\"8,000\""));
        assertTrue(reply.text().contains("id=\"f--purchase-price-fault\""));
        assertTrue(reply.text().contains("id=\"f--jobs-0-perYearHigh-fault\""), reply.text());
    }

    @Test
    void daysLetAreNotSpreadWhereNothingIsLet() throws Exception {
        Reply reply = page(address(
                Map.of("/uncertainty/lettingDaysPerYear/low", "5", "/uncertainty/lettingDaysPerYear/high", "9")));
        assertEquals(422, reply.status());
        assertTrue(reply.text().contains("id=\"f--uncertainty-lettingDaysPerYear-low-fault\""), reply.text());
        assertTrue(reply.text().contains("nothing is let: fill in the days let"), reply.text());
        assertFalse(reply.text().contains("fill this in"), reply.text());
    }

    @Test
    void aBlankRowOfJobsIsLeftOut() throws Exception {
        Map<String, String> changes = new LinkedHashMap<>();
        for (String field : new String[] {"name", "perYear", "days", "perYearLow", "perYearHigh"}) {
            changes.put("/jobs/0/" + field, "");
        }
        changes.put("/depreciation/method", "published table");
        changes.put("/depreciation/table", "A-1, 5-year, half-year");
        Reply reply = page(address(changes));
        assertEquals(200, reply.status(), reply.text());
        assertTrue(reply.text().contains("short film, one job"));
        assertFalse(reply.text().contains("commercials, one job"));
        assertTrue(reply.text().contains("IRS Publication 946"));
    }

    @Test
    void whatWasRentedAndSoldAndASecondCardAreTaken() throws Exception {
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put("/purchase/resale/lossPercentPerYear", "0");
        changes.put("/history/0/date", "2026-02-02");
        changes.put("/history/0/to", "2026-02-04");
        changes.put("/history/0/rent", "7900");
        changes.put("/history/3/date", "2026-05-18");
        changes.put("/history/3/rent", "980");
        changes.put("/ownSales/1/months", "36");
        changes.put("/ownSales/1/paid", "1000");
        changes.put("/ownSales/1/soldFor", "500");
        changes.put("/jobs/0/prepDays", "1");
        changes.put("/rates/0/dayFactors/prep", "0");
        changes.put("/rates/1/blocks/0/days", "1");
        changes.put("/rates/1/blocks/0/price", "90");
        changes.put("/depreciation/method", "straight line");
        changes.put("/depreciation/years", "4");
        changes.put("/depreciation/salvage", "1000");
        Reply reply = page(address(changes));
        assertEquals(200, reply.status(), reply.text());
        assertTrue(
                reply.text().contains("It would have bought on 18 May 2026, after 7\u202f900.00\u00a0EUR of rent"),
                reply.text());
        assertTrue(reply.text().contains("It would never have bought, but rented 4 × a day"), reply.text());
        assertTrue(reply.text().contains("rented 2 Feb 2026"));
        assertTrue(reply.text().contains("1\u202f750.00"), "a quarter of 7000 a year");
        // Half of 8000 after three years, at 6 per cent: 4000 / 1.06^3.
        assertTrue(reply.text().contains("3\u202f358.48"), reply.text());
        // The prep day costs nothing but the trip on the first card, the two others 90 each on the second.
        assertTrue(reply.text().contains("commercials, one job</th><td class=\"amount\">220.00"), reply.text());
    }

    @Test
    void jobsAsTheyWereAreDrawnEachAsLikely() throws Exception {
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put("/jobs/0/daysValues", "3, 3, 9");
        changes.put("/jobs/0/perYearValues", "4, 8");
        Reply reply = page(address(changes));
        assertEquals(200, reply.status(), reply.text());
        assertTrue(reply.text().contains("commercials: days a job: 3 to 9"), reply.text());
        assertTrue(reply.text().contains("commercials: jobs a year: 4 to 8"));
        Reply faulty = page(address(Map.of("/jobs/0/daysValues", "3, many")));
        assertEquals(422, faulty.status());
        assertTrue(faulty.text().contains("f--jobs-0-daysValues-fault"), faulty.text());
    }

    @Test
    void whatTakesLongIsWatchedAndStoppedAtItsOwnAddress() throws Exception {
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put("/uncertainty/draws", "100000");
        changes.put("/jobs/0/perYear", "1");
        changes.put("/jobs/0/perYearLow", "");
        changes.put("/jobs/0/perYearHigh", "");
        changes.put("/jobs/0/days", "200");
        changes.put("/jobs/0/daysLow", "150");
        changes.put("/jobs/0/daysHigh", "250");
        changes.put("/rates/1/blocks/0/days", "1");
        changes.put("/rates/1/blocks/0/price", "119");
        String address = address(changes);
        Reply waiting = served.page(address);
        assertEquals(200, waiting.status(), waiting.text());
        assertTrue(waiting.text().contains("of 100000 draws"), waiting.text());
        String stop = waiting.text().replaceAll("(?s).*action=\"(/verdict/runs/[0-9]+/stop)\".*", "$1");
        String query = address.substring(address.indexOf('?') + 1);
        String origin = "http://127.0.0.1:" + served.port();
        HttpResponse<String> stopped = HttpClient.newBuilder()
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build()
                .send(
                        HttpRequest.newBuilder(URI.create(origin + stop))
                                .header("Origin", origin)
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(HttpRequest.BodyPublishers.ofString("query=" + encoded(query)))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertEquals(address, stopped.uri().toString().substring(origin.length()));
        String shown = stopped.body();
        for (int look = 0; !shown.contains("Stopped after") && look < 100; look++) {
            Thread.sleep(100);
            shown = page(address).text();
        }
        assertTrue(shown.contains("of 100000 draws: how sure it is rests on those."), shown);
    }
}
