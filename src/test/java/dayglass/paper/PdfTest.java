package dayglass.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PdfTest {
    private static String page(String body) {
        return "<html lang=\"en\"><head><title>A paper</title></head><body>" + body + "</body></html>";
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void theTextCanBeReadBackInManyScripts() throws IOException {
        String words = "Größe 40 mm, 1 250,00 €, Łódź, Ελλάδα, Москва";

        assertTrue(text(Pdf.of(page("<p>" + words + "</p>"), PaperSize.A4)).contains(words));
    }

    @Test
    void everyFontIsEmbedded() throws IOException {
        byte[] pdf = Pdf.of(page("<h1>Bold</h1><p>Regular</p>"), PaperSize.A4);

        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> loose = new ArrayList<>();
            int fonts = 0;
            for (PDPage each : document.getPages()) {
                for (COSName name : each.getResources().getFontNames()) {
                    PDFont font = each.getResources().getFont(name);
                    fonts++;
                    if (!font.isEmbedded()) {
                        loose.add(font.getName());
                    }
                }
            }
            assertEquals(List.of(), loose);
            assertEquals(2, fonts);
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void theSheetHasTheSizeOfItsStandard(PaperSize size) throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(page("<p>a</p>"), size))) {
            PDRectangle sheet = document.getPage(0).getMediaBox();
            assertEquals(size.widthMm() / 25.4 * 72, sheet.getWidth(), 0.5);
            assertEquals(size.heightMm() / 25.4 * 72, sheet.getHeight(), 0.5);
        }
    }

    @Test
    void pagesAreNumberedAndTableHeadsRepeat() throws IOException {
        String rows = "<tr><td>row</td></tr>".repeat(120);
        String text = text(Pdf.of(
                page("<table><thead><tr><th>Heading</th></tr></thead><tbody>" + rows + "</tbody></table>"),
                PaperSize.A4));

        assertTrue(text.contains("1 of 3") && text.contains("3 of 3"), text);
        assertEquals(3, text.split("Heading", -1).length - 1);
    }

    @Test
    void theSamePageGivesTheSameBytes() throws InterruptedException {
        String page = page("<p>Same</p><svg width=\"100\" height=\"20\"><rect width=\"50\" height=\"10\"/></svg>");
        byte[] first = Pdf.of(page, PaperSize.LETTER);
        Thread.sleep(1100);

        assertArrayEquals(first, Pdf.of(page, PaperSize.LETTER));
    }

    /** Drawings are lines; their words are drawn with the same font, as outlines. */
    @Test
    void aDrawingIsPrinted() throws IOException {
        byte[] empty = Pdf.of(
                page("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200\" height=\"40\"></svg>"), PaperSize.A4);
        byte[] drawn = Pdf.of(
                page(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200\" height=\"40\"><text x=\"5\" y=\"20\">drawn words</text></svg>"),
                PaperSize.A4);

        assertTrue(marks(drawn) > marks(empty) + 100, marks(drawn) + " marks");
    }

    private static int marks(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImage(0, 3);
            int dark = 0;
            for (int pixel : image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth())) {
                dark += (pixel & 0xff) < 128 ? 1 : 0;
            }
            return dark;
        }
    }

    @Test
    void aPictureInThePageIsPrintedAndOneOutsideOfItIsNotRead(@TempDir Path folder) throws IOException {
        Path outside = folder.resolve("outside.png");
        ImageIO.write(new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB), "png", outside.toFile());
        String inside = "data:image/png;base64," + Base64.getEncoder().encodeToString(Files.readAllBytes(outside));

        assertEquals(1, pictures(Pdf.of(page("<img src=\"" + inside + "\"/>"), PaperSize.A4)));
        assertEquals(0, pictures(Pdf.of(page("<img src=\"" + outside.toUri() + "\"/>"), PaperSize.A4)));
    }

    private static int pictures(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int count = 0;
            for (COSName name : document.getPage(0).getResources().getXObjectNames()) {
                count += document.getPage(0).getResources().isImageXObject(name) ? 1 : 0;
            }
            return count;
        }
    }

    @Test
    void aPageWithoutAHeadIsAProgrammersFault() {
        assertThrows(IllegalArgumentException.class, () -> Pdf.of("<html><body/></html>", PaperSize.A4));
    }
}
