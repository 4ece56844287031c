package dayglass.books.chart;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.books.chart.Chart.CostCode;
import dayglass.sheet.CsvText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A chart as a table: a heading {@code code}, perhaps one {@code name}, and a row a code. Every bad row is told, and with
 * one bad row nothing is taken.
 */
public final class ChartTable {
    /** Codes in a chart, at most. */
    public static final int MOST_CODES = 5_000;

    private static final int LONGEST = 200;

    private ChartTable() {}

    /**
     * The codes of a table.
     *
     * @param pointer where the text stands, for faults
     */
    public static Outcome<List<CostCode>> read(byte[] csv, String pointer) {
        return CsvText.read(csv)
                .fold(
                        text -> read(text, pointer),
                        problem -> faulty(
                                pointer,
                                problem.faults().stream().map(Fault::message).toList()));
    }

    private static Outcome<List<CostCode>> read(CsvText text, String pointer) {
        List<String> headings = text.heading().cells().stream()
                .map(cell -> cell.strip().toLowerCase(Locale.ROOT))
                .toList();
        int code = headings.indexOf("code");
        int name = headings.indexOf("name");
        if (code < 0) {
            return faulty(pointer, List.of("Line 1: no column is headed \"code\": name it so"));
        }
        if (text.rows().size() > MOST_CODES) {
            return faulty(pointer, List.of("The chart has more than " + MOST_CODES + " codes: leave some out"));
        }
        List<String> wrong = new ArrayList<>();
        Map<String, Long> seen = new LinkedHashMap<>();
        List<CostCode> codes = new ArrayList<>();
        for (CsvText.Row row : text.rows()) {
            String said = code < row.cells().size() ? row.cells().get(code).strip() : "";
            String called = name >= 0 && name < row.cells().size()
                    ? row.cells().get(name).strip()
                    : "";
            fault(row, headings.size(), said, called).forEach(what -> wrong.add("Line " + row.line() + ": " + what));
            Long earlier = seen.putIfAbsent(said, row.line());
            if (earlier != null && !said.isEmpty()) {
                wrong.add("Line " + row.line() + ": the code " + said + " stands in line " + earlier
                        + " already: keep one of the two");
            }
            codes.add(new CostCode(said, called));
        }
        return wrong.isEmpty() ? Outcome.done(codes) : faulty(pointer, wrong);
    }

    private static List<String> fault(CsvText.Row row, int headings, String code, String name) {
        if (row.cells().size() != headings) {
            return List.of("it has " + row.cells().size() + " fields where the heading has " + headings
                    + ": check its separators and quotes");
        }
        if (code.isEmpty()) {
            return List.of("the code is missing: fill it in, or take the row out");
        }
        if (Math.max(length(code), length(name)) > LONGEST || hasControls(code + name)) {
            return List.of("code and name are one line each, of at most " + LONGEST + " characters: shorten them");
        }
        return List.of();
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private static boolean hasControls(String text) {
        return text.codePoints().anyMatch(each -> {
            int type = Character.getType(each);
            return type == Character.CONTROL || type == Character.SURROGATE;
        });
    }

    private static Outcome<List<CostCode>> faulty(String pointer, List<String> wrong) {
        return Outcome.refused(Problem.faulty(
                wrong.stream().map(what -> new Fault(pointer, what)).toList()));
    }
}
