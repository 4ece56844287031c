package dayglass.web.page.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import dayglass.support.Reply;
import java.io.IOException;
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

    /** Pages are no part of the contract, so they are fetched as a browser does. */
    private static Reply page(String address) throws IOException, InterruptedException {
        HttpResponse<String> response = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + address))
                                .header("Accept", "text/html")
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        return new Reply(response.statusCode(), response.headers().map(), response.body());
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
        assertEquals(5, reply.text().split("<svg class=\"chart\"", -1).length - 1);
        assertTrue(reply.text().contains("class=\"crossing\""));
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
}
