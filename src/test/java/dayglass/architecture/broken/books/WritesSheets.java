package dayglass.architecture.broken.books;

import java.io.OutputStream;
import org.dhatim.fastexcel.Workbook;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class WritesSheets {
    static Workbook workbook(OutputStream out) {
        return new Workbook(out, "x", null);
    }
}
