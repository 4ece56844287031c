package dayglass.web.page.label;

import dayglass.paper.PaperSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Labels laid out on sheets, in millimetres.
 *
 * @param labels in their order; one without a symbol takes no place
 */
public record LabelSheets(Layout layout, Symbol.Kind kind, List<Text> labels) {
    private static final double PADDING_MM = 2;
    private static final double QR_SHARE = 0.5;
    private static final double BARS_SHARE = 0.4;
    private static final double CHARACTER_WIDTH = 0.62;
    private static final double TAG_HEIGHT = 0.22;
    private static final double LINE_HEIGHT = 0.1;
    private static final double LINE_DISTANCE = 1.4;
    private static final double LEAST_QR_MODULE_MM = 0.33;
    private static final double LEAST_BAR_MODULE_MM = 0.19;

    public LabelSheets {
        labels = List.copyOf(labels);
    }

    /**
     * How a sheet is parted.
     *
     * @param marginMm on each side of the sheet
     * @param used how many places of the first sheet are taken already
     */
    public record Layout(PaperSize paper, int columns, int rows, int marginMm, int used) {
        double widthMm() {
            return (paper.widthMm() - 2 * marginMm) / columns;
        }

        double heightMm() {
            return (paper.heightMm() - 2 * marginMm) / rows;
        }
    }

    /** What a label says. */
    public record Text(String tag, String model, String house) {}

    /** A sheet of paper. */
    public record Sheet(String paper, String widthMm, String heightMm, List<Label> labels) {
        public Sheet {
            labels = List.copyOf(labels);
        }
    }

    /** A label at its place, from the sheet's upper left corner. */
    public record Label(Box outline, Box code, Symbol symbol, List<Line> lines) {
        public Label {
            lines = List.copyOf(lines);
        }
    }

    public record Box(String x, String y, String width, String height) {}

    /** Words with their size and the place of their base line. */
    public record Line(String x, String y, String size, String words, boolean strong) {}

    List<Sheet> sheets() {
        List<List<Label>> sheets = new ArrayList<>();
        int place = layout.used();
        int aSheet = layout.columns() * layout.rows();
        for (Text text : labels) {
            Optional<Symbol> symbol = Symbol.of(text.tag(), kind);
            if (symbol.isPresent()) {
                while (sheets.size() <= place / aSheet) {
                    sheets.add(new ArrayList<>());
                }
                sheets.get(place / aSheet).add(label(text, symbol.get(), place % aSheet));
                place++;
            }
        }
        return sheets.stream()
                .map(each -> new Sheet(
                        layout.paper().word(),
                        mm(layout.paper().widthMm()),
                        mm(layout.paper().heightMm()),
                        each))
                .toList();
    }

    /** Tags whose symbol would have modules finer than scanners and printers take; the limits are common practice. */
    List<String> tooFine() {
        double least = kind == Symbol.Kind.QR ? LEAST_QR_MODULE_MM : LEAST_BAR_MODULE_MM;
        return labels.stream()
                .filter(text -> Symbol.of(text.tag(), kind)
                        .filter(symbol -> codeWidth() / symbol.width() < least)
                        .isPresent())
                .map(Text::tag)
                .toList();
    }

    /** Tags that this kind of symbol cannot hold. */
    List<String> impossible() {
        return labels.stream()
                .map(Text::tag)
                .filter(tag -> Symbol.of(tag, kind).isEmpty())
                .toList();
    }

    private double codeWidth() {
        double inner = layout.widthMm() - 2 * PADDING_MM;
        return kind == Symbol.Kind.QR ? Math.min(layout.heightMm() - 2 * PADDING_MM, inner * QR_SHARE) : inner;
    }

    private Label label(Text text, Symbol symbol, int place) {
        int row = place / layout.columns();
        double x = layout.marginMm() + place % layout.columns() * layout.widthMm();
        double y = layout.marginMm() + row * layout.heightMm();
        double height = layout.heightMm();
        double code = codeWidth();
        boolean qr = kind == Symbol.Kind.QR;
        double codeHeight = qr ? code : (height - 2 * PADDING_MM) * BARS_SHARE;
        double codeY = qr ? y + (height - codeHeight) / 2 : y + PADDING_MM;
        double textX = qr ? x + PADDING_MM + code + PADDING_MM / 2 : x + PADDING_MM;
        double textWidth = x + layout.widthMm() - PADDING_MM - textX;
        double textY = qr ? codeY : codeY + codeHeight;
        return new Label(
                new Box(mm(x), mm(y), mm(layout.widthMm()), mm(height)),
                new Box(mm(x + PADDING_MM), mm(codeY), mm(code), mm(codeHeight)),
                symbol,
                lines(text, textX, textY, textWidth));
    }

    private List<Line> lines(Text text, double x, double y, double width) {
        double height = layout.heightMm();
        double tagSize = fitting(text.tag(), height * TAG_HEIGHT, width);
        double lineSize = height * LINE_HEIGHT;
        double line = y + tagSize;
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(mm(x), mm(line), mm(tagSize), text.tag(), true));
        for (String words : List.of(text.model(), text.house())) {
            if (!words.isEmpty()) {
                line += lineSize * LINE_DISTANCE;
                lines.add(new Line(mm(x), mm(line), mm(fitting(words, lineSize, width)), words, false));
            }
        }
        return lines;
    }

    /** The size at which words fit into a width. */
    private static double fitting(String words, double size, double width) {
        int characters = Math.max(1, words.codePointCount(0, words.length()));
        return Math.min(size, width / (CHARACTER_WIDTH * characters));
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.2f", length);
    }
}
