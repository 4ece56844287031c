package dayglass.architecture.broken.books;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;

/** Breaks a rule on purpose: prints by itself. */
public final class PrintsPapers {
    PdfRendererBuilder printer() {
        return new PdfRendererBuilder();
    }
}
