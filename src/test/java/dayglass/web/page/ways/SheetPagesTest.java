package dayglass.web.page.ways;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.optics.check.Fit;
import dayglass.support.OneServer;
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
import org.junit.jupiter.api.io.TempDir;

/** From an empty job to its sheet, as a user would go, and back from slips; then in a real browser. */
class SheetPagesTest extends OneServer {
    private static final String REQUEST = """
            {"job": "Reed Bank", "currency": "EUR",
             "schedule": [{"from": "2027-04-05", "to": "2027-04-06", "use": "shoot"}],
             "needs": [{"slot": "40 mm", "count": 1}],
             "rentals": [
               {"id": "plain", "supplier": "Alder Hire", "covers": {"40 mm": 1}, "blocks": [{"days": 1, "price": "100.00"}]},
               {"id": "fine", "supplier": "Alder Hire", "covers": {"40 mm": 1}, "blocks": [{"days": 1, "price": "300.00"}]}],
             "purchases": [], "owned": []}""";

    private final HttpClient client = HttpClient.newHttpClient();

    private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return client.send(request.header("Accept", "text/html").build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + path));
    }

    private String get(String path) throws Exception {
        HttpResponse<String> response = send(at(path));
        assertEquals(200, response.statusCode(), response.body());
        return response.body();
    }

    private HttpResponse<String> post(String path, Map<String, String> form) throws Exception {
        String body = form.entrySet().stream()
                .map(each -> URLEncoder.encode(each.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(each.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return send(at(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private static long model(String name, int flare) {
        return served.post("/api/lens-models", """
                        {"maker": "Vellum", "name": "%s", "kind": "anamorphic prime", "focal": "40", "tStop": "2.8",
                         "squeeze": "2", "imageCircle": "34", "mounts": ["PL"], "look": {"flare": %d}}""".formatted(name, flare)).id();
    }

    @Test
    void fromAnEmptyJobToItsSheet(@TempDir java.nio.file.Path profile) throws Exception {
        var job = served.post("/api/jobs/import", REQUEST).json();
        String base = "/jobs/" + job.get("id").asLong();
        String empty = get(base + "/ways");
        assertTrue(empty.contains("Write the brief"));
        assertTrue(empty.contains("None yet. A way is a set bought"));

        Map<String, String> brief = new LinkedHashMap<>(Map.of(
                "version", "0",
                "/picture/camera/width", "24,89",
                "/picture/camera/height", "18.66",
                "/picture/camera/mount", "PL",
                "/picture/delivery/aspect", "2.39",
                "/looks/flare/grade", "5",
                "/budget/amount", "250.00"));
        HttpResponse<String> slip = post(base + "/brief", brief);
        assertEquals(422, slip.statusCode());
        assertTrue(slip.body().contains("write a point, not a comma"));
        assertTrue(slip.body().contains("value=\"24,89\""), "what was typed is kept");
        brief.put("/picture/camera/width", "24.89");
        assertEquals(303, post(base + "/brief", brief).statusCode());

        long card = job.at("/rateCards/0").asLong();
        long dull = model("Plain 40", 1);
        long grand = model("Grand 40", 5);
        assertEquals(422, post(base + "/ways/new", Map.of("/name", "Nothing")).statusCode());
        assertEquals(303, add(base, "Cheap", card + "/plain", dull).statusCode());
        assertEquals(303, add(base, "Dear", card + "/fine", grand).statusCode());
        assertTrue(get("/ways/1").contains("value=\"card/" + card + "/plain\" selected"));

        assertEquals(303, post(base + "/ways/sheet", Map.of()).statusCode());
        for (int tries = 0; !get(base + "/ways/state").contains("\"over\": true") && tries < 100; tries++) {
            Thread.sleep(50);
        }
        String sheet = get(base + "/ways?sort=look&beside=1&beside=2");
        assertTrue(sheet.contains("200.00"), sheet);
        assertTrue(sheet.indexOf(">2 Dear") < sheet.indexOf(">1 Cheap"), "the better look comes first");
        String byCost = get(base + "/ways?sort=best");
        assertTrue(byCost.indexOf(">1 Cheap") < byCost.indexOf(">2 Dear"));
        Fit.CAUTIONS.forEach(caution -> assertTrue(sheet.contains(caution), caution));
        assertTrue(sheet.contains("Side by side"));
        assertFalse(byCost.contains("Side by side"));

        String csv = get(base + "/ways/sheet.csv");
        assertTrue(csv.startsWith("way,note,fit,slots served,look,"), csv);
        assertTrue(csv.contains("\r\nCheap,,fits,1 of 1 slots,0.00,,EUR,,200.00,,200.00,200.00,yes,,yes,"), csv);
        assertEquals("PK", get(base + "/ways/sheet.xlsx").substring(0, 2));
        assertEquals(404, send(at("/jobs/99999/ways")).statusCode());
        drawnToScale(base, profile);
    }

    private HttpResponse<String> add(String base, String name, String rate, long model) throws Exception {
        return post(
                base + "/ways/new",
                Map.of(
                        "/name",
                        name,
                        // The first piece was left empty; its glass goes with it.
                        "/pieces/0/source",
                        "",
                        "/pieces/0/glass/0/count",
                        "1",
                        "/pieces/1/source",
                        "card/" + rate,
                        "/pieces/1/glass/1/lensModel",
                        String.valueOf(model),
                        "/pieces/1/glass/1/count",
                        "1"));
    }

    /** The least look stands at the foot and the least cost at the left; costs of 200 and 600 from a nought at the left. */
    private static void drawnToScale(String base, java.nio.file.Path profile) {
        try (var browser = dayglass.web.page.Browser.start(profile)) {
            browser.open("http://127.0.0.1:" + served.port() + base + "/ways");
            double ratio = Double.parseDouble(String.valueOf(browser.run("""
                            const c = [...document.querySelectorAll('.scatter circle')].map(each => each.getBoundingClientRect());
                            const rule = document.querySelector('.scatter line.rule').getBoundingClientRect();
                            const x = each => each.x + each.width / 2 - rule.x;
                            return x(c[0]) / x(c[1]);""")));
            assertEquals(200.0 / 600.0, ratio, 0.01);
        }
    }
}
