package dayglass.web.page.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.paper.PaperSize;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Labels on their sheets. */
class LabelSheetsTest {
    private static List<LabelSheets.Text> labels(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new LabelSheets.Text("DG-" + number, "Coast 50 mm", "The house"))
                .toList();
    }

    private static LabelSheets sheets(LabelSheets.Layout layout, Symbol.Kind kind, int count) {
        return new LabelSheets(layout, kind, labels(count));
    }

    @Test
    void placesThatAreUsedAreLeftFree() {
        LabelSheets.Layout layout = new LabelSheets.Layout(PaperSize.A4, 3, 8, 0, 23);
        List<LabelSheets.Sheet> sheets = sheets(layout, Symbol.Kind.QR, 2).sheets();
        assertEquals(2, sheets.size());
        assertEquals("140.00", sheets.get(0).labels().get(0).outline().x());
        assertEquals("259.88", sheets.get(0).labels().get(0).outline().y());
        assertEquals("0.00", sheets.get(1).labels().get(0).outline().x());
    }

    @Test
    void aTagThatNoSymbolHoldsTakesNoPlaceAndIsNamed() {
        LabelSheets sheets = new LabelSheets(
                new LabelSheets.Layout(PaperSize.LETTER, 3, 10, 5, 0),
                Symbol.Kind.CODE_128,
                List.of(new LabelSheets.Text("Größe-50", "", ""), new LabelSheets.Text("DG-1", "", "")));
        assertEquals(List.of("Größe-50"), sheets.impossible());
        assertEquals(1, sheets.sheets().get(0).labels().size());
    }

    @Test
    void linesTooFineForScannersAreNamed() {
        List<LabelSheets.Text> text = List.of(new LabelSheets.Text("COAST-85-0377", "", ""));
        LabelSheets.Layout narrow = new LabelSheets.Layout(PaperSize.A4, 8, 20, 5, 0);
        LabelSheets.Layout wide = new LabelSheets.Layout(PaperSize.A4, 3, 8, 5, 0);
        assertEquals(List.of("COAST-85-0377"), new LabelSheets(narrow, Symbol.Kind.CODE_128, text).tooFine());
        assertEquals(List.of(), new LabelSheets(wide, Symbol.Kind.CODE_128, text).tooFine());
    }

    /** Whatever the layout, every label lies on its sheet, its code inside its edge, and none is lost. */
    @Property
    void everyLabelLiesOnItsSheet(
            @ForAll @IntRange(min = 1, max = 8) int columns,
            @ForAll @IntRange(min = 1, max = 20) int rows,
            @ForAll @IntRange(max = 30) int margin,
            @ForAll @IntRange(min = 1, max = 60) int count,
            @ForAll Symbol.Kind kind) {
        LabelSheets.Layout layout = new LabelSheets.Layout(PaperSize.LETTER, columns, rows, margin, 0);
        int placed = 0;
        for (LabelSheets.Sheet sheet : sheets(layout, kind, count).sheets()) {
            for (LabelSheets.Label label : sheet.labels()) {
                placed++;
                inside(label.outline(), new LabelSheets.Box("0", "0", sheet.widthMm(), sheet.heightMm()));
                inside(label.code(), label.outline());
                LabelSheets.Line last = label.lines().get(label.lines().size() - 1);
                assertTrue(
                        number(last.y())
                                < number(label.outline().y())
                                        + number(label.outline().height()),
                        last + " " + label.outline());
            }
        }
        assertEquals(count, placed);
    }

    private static void inside(LabelSheets.Box box, LabelSheets.Box of) {
        double slack = 0.03;
        assertTrue(number(box.x()) >= number(of.x()) - slack, box + " in " + of);
        assertTrue(number(box.y()) >= number(of.y()) - slack, box + " in " + of);
        assertTrue(
                number(box.x()) + number(box.width()) <= number(of.x()) + number(of.width()) + slack, box + " " + of);
        assertTrue(
                number(box.y()) + number(box.height()) <= number(of.y()) + number(of.height()) + slack, box + " " + of);
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
