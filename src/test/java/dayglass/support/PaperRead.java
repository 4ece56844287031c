package dayglass.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * A paper as a reader of PDF that did not write it reads it; blanks of every kind are plain.
 *
 * @param loose fonts that are not embedded
 */
public record PaperRead(String text, List<String> pages, float widthMm, int fonts, List<String> loose) {
    private static final float POINTS_A_MM = 72f / 25.4f;

    /** Fetches a paper that is there. */
    public static PaperRead of(Served served, String address) {
        try {
            HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + address))
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray());
            assertEquals(200, answer.statusCode(), address);
            assertEquals(
                    "application/pdf",
                    answer.headers().firstValue("Content-Type").orElse(""));
            return of(answer.body());
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    private static PaperRead of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            List<String> loose = new ArrayList<>();
            int fonts = 0;
            for (PDPage page : document.getPages()) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(pages.size() + 1);
                stripper.setEndPage(pages.size() + 1);
                pages.add(stripper.getText(document).replaceAll("\\h+", " "));
                for (COSName name : page.getResources().getFontNames()) {
                    fonts++;
                    if (!page.getResources().getFont(name).isEmbedded()) {
                        loose.add(name.getName());
                    }
                }
            }
            float width = document.getPage(0).getMediaBox().getWidth() / POINTS_A_MM;
            return new PaperRead(String.join("\n", pages), pages, width, fonts, loose);
        }
    }
}
