package dayglass.web.page.ways;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.optics.check.Fit;
import dayglass.support.OneServer;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
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
        assertTrue(
                csv.contains(
                        "\r\nCheap,,fits,1 of 1 slots,0.00,,EUR,,,200.00,,200.00,200.00,yes,,yes,plain rented for 2 days,,,"),
                csv);
        readBack(base + "/ways/sheet.xlsx");
        readBackPdf(base + "/ways/sheet.pdf", 297);
        readBackPdf(base + "/ways/sheet.pdf?paper=Letter&sort=look", 279.4);
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

    /** The workbook as another program reads it: amounts are numbers, what cannot be had is empty, cautions follow. */
    private void readBack(String address) throws Exception {
        HttpResponse<byte[]> response = client.send(at(address).build(), HttpResponse.BodyHandlers.ofByteArray());
        assertEquals(200, response.statusCode());
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(response.body()))) {
            Sheet ways = book.getSheet("Ways");
            Map<String, Integer> columns = new LinkedHashMap<>();
            ways.getRow(0).forEach(cell -> columns.put(cell.getStringCellValue(), cell.getColumnIndex()));
            Row dear = ways.getRow(2);
            assertEquals(
                    "Dear",
                    dear.getCell(java.util.Objects.requireNonNull(columns.get("way")))
                            .getStringCellValue());
            assertEquals(
                    600.0,
                    dear.getCell(java.util.Objects.requireNonNull(columns.get("best mix")))
                            .getNumericCellValue());
            assertEquals(
                    100.0,
                    dear.getCell(java.util.Objects.requireNonNull(columns.get("look")))
                            .getNumericCellValue());
            assertEquals(
                    "no",
                    dear.getCell(java.util.Objects.requireNonNull(columns.get("within budget")))
                            .getStringCellValue());
            Cell bought = dear.getCell(java.util.Objects.requireNonNull(columns.get("bought")));
            assertTrue(bought == null || bought.getCellType() == CellType.BLANK);
            Sheet cautions = book.getSheet("Cautions");
            assertTrue(Fit.CAUTIONS.stream().allMatch(caution -> holds(cautions, caution)));
        }
    }

    /** The text of the paper as another reader has it: every way, its amounts and each caution, on one page laid across. */
    private void readBackPdf(String address, double widthMm) throws Exception {
        HttpResponse<byte[]> response = client.send(at(address).build(), HttpResponse.BodyHandlers.ofByteArray());
        assertEquals(200, response.statusCode());
        try (PDDocument document = Loader.loadPDF(response.body())) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(widthMm / 25.4 * 72, document.getPage(0).getMediaBox().getWidth(), 1);
            String text = new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0\\u202f]+", " ");
            assertTrue(text.contains("Options sheet: Reed Bank"), text);
            assertTrue(text.contains("[1] Cheap fits, 1 of 1 slots 0.0 – 200.00"), text);
            assertTrue(text.contains("[2] Dear fits, 1 of 1 slots 100.0 – 600.00"), text);
            assertTrue(text.contains("budget 250.00 EUR"), text);
            Fit.CAUTIONS.forEach(caution -> assertTrue(text.contains(caution), caution));
        }
    }

    private static boolean holds(Sheet sheet, String text) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(text)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Costs of 200 and 600 from a nought at the left; looks of 0 and 100, so that the first stands on the mark of 0, the
     * other on that of 100, and the third mark, of 40, lies at 0.4 of the way. No number covers another, and a phone shows all.
     */
    private static void drawnToScale(String base, java.nio.file.Path profile) {
        try (var browser = dayglass.web.page.Browser.start(profile)) {
            browser.open("http://127.0.0.1:" + served.port() + base + "/ways");
            assertEquals(200.0 / 600.0, measured(browser, "x(c[0]) / x(c[1])"), 0.01);
            assertEquals(0, measured(browser, "y(c[0]) - y(rules[0])"), 0.5);
            assertEquals(0, measured(browser, "y(c[1]) - y(rules[5])"), 0.5);
            assertEquals(0.4, measured(browser, "(y(c[0]) - y(rules[2])) / (y(c[0]) - y(c[1]))"), 0.01);
            assertEquals(0, measured(browser, "texts.filter(a => texts.some(b => a !== b && meet(a, b))).length"));
            browser.beAPhone(390);
            browser.open("http://127.0.0.1:" + served.port() + base + "/ways?beside=1&beside=2");
            assertEquals(0, browser.sidewaysScroll());
        }
    }

    private static double measured(dayglass.web.page.Browser browser, String expression) {
        return Double.parseDouble(String.valueOf(browser.run("""
                        const box = name => [...document.querySelectorAll('.scatter ' + name)].map(each => each.getBoundingClientRect());
                        const c = box('circle');
                        const rules = box('line.rule');
                        const texts = box('.point text');
                        const x = each => each.x + each.width / 2 - rules[0].x;
                        const y = each => each.y + each.height / 2;
                        const meet = (a, b) => a.x < b.right && b.x < a.right && a.y < b.bottom && b.y < a.bottom;
                        """ + "return " + expression + ";")));
    }
}
