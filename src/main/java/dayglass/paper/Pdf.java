package dayglass.paper;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * Prints a page as PDF. The page is XHTML; the house's style for paper (`paper.css`: fonts, tables, page numbers at the
 * foot) is laid under its own. Inline SVG that names its namespace is drawn; pictures are `data:` addresses.
 */
public final class Pdf {
    private static final String FONT = "paper-font";
    private static final String FONTS = "/liberation/LiberationSans-";
    private static final String HEAD_ENDS = "</head>";

    static {
        XRLog.setLoggingEnabled(false);
    }

    private Pdf() {}

    /**
     * Prints.
     *
     * @param page well-formed XHTML with a head; what it refers to outside of itself is left out
     * @throws IllegalArgumentException where the page has no head
     */
    public static byte[] of(String page, PaperSize size) {
        return print(page, size.widthMm() + "mm " + size.heightMm() + "mm");
    }

    /** The same on a sheet that is laid across. */
    public static byte[] across(String page, PaperSize size) {
        return print(page, size.heightMm() + "mm " + size.widthMm() + "mm");
    }

    private static byte[] print(String page, String size) {
        int head = page.indexOf(HEAD_ENDS);
        if (head < 0) {
            throw new IllegalArgumentException("a page to print has a head");
        }
        String styled = page.substring(0, head) + style(size) + page.substring(head);
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .withHtmlContent(styled, null)
                .useUriResolver((base, address) -> within(address) ? address : null)
                .useProtocolsStreamImplementation(Font::new, FONT)
                .useSVGDrawer(new BatikSVGDrawer());
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            return bytes(renderer.getPdfDocument(), styled);
        } catch (IOException e) {
            throw new UncheckedIOException("a page could not be printed", e);
        }
    }

    /** The library stamps its moment of writing; a document's date stands in its text. */
    private static byte[] bytes(PDDocument document, String page) throws IOException {
        PDDocumentInformation said = document.getDocumentInformation();
        PDDocumentInformation kept = new PDDocumentInformation();
        kept.setTitle(said.getTitle());
        document.setDocumentInformation(kept);
        CRC32 sum = new CRC32();
        sum.update(page.getBytes(StandardCharsets.UTF_8));
        document.setDocumentId(sum.getValue());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    private static String style(String size) {
        return "<style>@page { size: " + size + "; }\n" + house() + "</style>";
    }

    private static String house() {
        try (InputStream sheet = resource("/dayglass/paper/paper.css")) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the program cannot read its style for paper", e);
        }
    }

    private static boolean within(String address) {
        return address.startsWith("data:") || address.startsWith(FONT + ":");
    }

    /** A font of the style for paper, by the address that the style gives it: {@code paper-font:Bold}. */
    private record Font(String address) implements FSStream {
        @Override
        public InputStream getStream() {
            return resource(FONTS + address.substring(FONT.length() + 1) + ".ttf");
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }

    private static InputStream resource(String name) {
        InputStream content = Pdf.class.getResourceAsStream(name);
        if (content == null) {
            throw new IllegalStateException("the program lacks its file " + name);
        }
        return content;
    }
}
