package dayglass.web.page.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.OneServer;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The verdict on paper, its text read back. */
class VerdictPaperTest extends OneServer {
    private static final Path EXAMPLE =
            Path.of("src/test/resources/dayglass/cost/verdict/anamorphic-set-for-commercials.json");

    private static HttpResponse<byte[]> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static HttpRequest.Builder at(String address) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + address));
    }

    private static HttpResponse<byte[]> posted(String address) throws Exception {
        return send(at(address)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(Files.readString(EXAMPLE))));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0\u202f]+", " ");
        }
    }

    @Test
    void whatWasAskedAndWhatItComesToCanBeReadBack() throws Exception {
        HttpResponse<byte[]> reply = posted("/api/verdicts.pdf");
        assertEquals(200, reply.statusCode());
        assertEquals(
                "application/pdf", reply.headers().firstValue("Content-Type").orElse(""));
        String text = text(reply.body());
        for (String words : new String[] {
            "Buy: it costs 3 770.46 EUR less than renting over 36 months and 30 days of use a year.",
            "loan 5 000.00 EUR at 7.5 % a year over 24 months, level payments",
            "rented at 1 day 120.00; 7 days 360.00; prep day × 0; each trip 40.00; loss damage waiver 12 %",
            "Cost of owning 4 160.43 EUR",
            "Cost of renting 7 930.89 EUR",
            "Rent of each year, at present value year 1",
            "Chance that owning is cheaper",
            "IRS Publication 946",
            "at first price −8 000.00",
            "no tax, legal or insurance advice",
            "Every month with its lines"
        }) {
            assertTrue(text.contains(words), words + " is not in: " + text);
        }
    }

    /** The years add up to what the last month has come to. */
    @Test
    void theLastYearEndsWhereTheLastMonthDoes() throws Exception {
        String text = text(posted("/api/verdicts.pdf").body());
        String soFar = served.post("/api/verdicts", Files.readString(EXAMPLE))
                .json()
                .at("/months/36/soFar")
                .asString();
        String grouped =
                soFar.replaceAll("^(-?[0-9]{1,3})([0-9]{3}\\.)", "$1 $2").replace('-', '\u2212');
        assertTrue(text.contains(grouped + " Owning and renting, by months owned"), grouped + ": " + text);
    }

    @Test
    void thePageLeadsToItsPaper() throws Exception {
        String query = VerdictForm.first("EUR").values().entrySet().stream()
                .map(each -> URLEncoder.encode(each.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(each.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        String page = VerdictPagesTest.weighed("/verdict?" + query).text();
        assertTrue(page.contains("/verdict.pdf?%2Fcurrency=EUR"), page);
        HttpResponse<byte[]> reply = send(at("/verdict.pdf?" + query + "&paper=Letter"));
        assertEquals(200, reply.statusCode());
        String text = text(reply.body());
        assertTrue(text.contains("jobs: commercials 6 a year of 3 days"), text);
        assertTrue(page.contains("Cost of owning"));
        assertEquals(400, send(at("/verdict.pdf?" + query + "&paper=A0")).statusCode());
        assertEquals(400, posted("/api/verdicts.pdf?paper=A0").statusCode());
    }
}
