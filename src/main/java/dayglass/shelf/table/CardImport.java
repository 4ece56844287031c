package dayglass.shelf.table;

import dayglass.base.Currency;
import dayglass.catalogue.Rate;
import dayglass.sheet.CsvText;
import dayglass.shelf.RateJson;
import dayglass.wire.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads one table of rates. Every column that has something in it must be understood: a term that was passed over would
 * be a wrong price.
 */
final class CardImport {
    private final CsvText text;
    private final LetsCells things;
    private final Reader<Rate> reader;

    /** What each column holds, by its number from 1. */
    private final Map<Integer, TableField> columns = new LinkedHashMap<>();

    private final List<CardReport.Line> rates = new ArrayList<>();
    private final List<ImportReport.Bad> faulty = new ArrayList<>();

    CardImport(CsvText text, LetsCells things, Currency currency) {
        this.text = text;
        this.things = things;
        this.reader = RateJson.reader(currency);
    }

    CardReport report() {
        List<String> headings = text.heading().cells();
        for (int number = 1; number <= headings.size(); number++) {
            takeColumn(number, headings.get(number - 1));
        }
        if (text.rows().isEmpty()) {
            faulty.add(new ImportReport.Bad(
                    text.heading().line(), 0, "", "is all there is: add a row for each rate below the headings"));
        }
        Map<String, Long> ids = new LinkedHashMap<>();
        text.rows().forEach(row -> takeRow(row, ids));
        List<ImportReport.Column> shown = new ArrayList<>();
        for (int number = 1; number <= headings.size(); number++) {
            shown.add(new ImportReport.Column(
                    number,
                    headings.get(number - 1),
                    Optional.ofNullable(columns.get(number)).map(TableField::name)));
        }
        return new CardReport(text.separator(), shown, rates, faulty);
    }

    private void takeColumn(int number, String heading) {
        Optional<TableField> field = RateColumns.named(heading);
        if (field.isEmpty()) {
            if (!isEmpty(number)) {
                bad(text.heading().line(), number, "is no column of a rate: rename it or take it out of the table");
            }
        } else if (columns.containsValue(field.get())) {
            bad(text.heading().line(), number, "stands in an earlier column already: keep one of the two");
        } else {
            columns.put(number, field.get());
        }
    }

    /** A column without a heading and without a cell is what spreadsheets leave behind. */
    private boolean isEmpty(int number) {
        return text.heading().cells().get(number - 1).isBlank()
                && text.rows().stream()
                        .allMatch(row -> row.cells().size() < number
                                || row.cells().get(number - 1).isBlank());
    }

    private void takeRow(CsvText.Row row, Map<String, Long> ids) {
        int wanted = text.heading().cells().size();
        if (row.cells().size() != wanted) {
            bad(
                    row.line(),
                    0,
                    "has " + row.cells().size() + " fields where the heading has " + wanted
                            + ": check its separators and quotes");
            return;
        }
        if (row.cells().stream().allMatch(String::isBlank)) {
            return;
        }
        RateRow cells = new RateRow(things);
        columns.forEach((number, field) -> cells.take(number, field, row.cells().get(number - 1)));
        Optional<Rate> rate = cells.rate(reader);
        cells.wrong().forEach(wrong -> bad(row.line(), wrong));
        rate.ifPresent(found -> {
            Long earlier = ids.putIfAbsent(found.code(), row.line());
            if (earlier == null) {
                rates.add(new CardReport.Line(row.line(), found));
            } else {
                bad(row.line(), new RateRow.Wrong(0, "id", "stands in line " + earlier + " already: rename one"));
            }
        });
    }

    private void bad(long line, RateRow.Wrong wrong) {
        int column = wrong.column() > 0 ? wrong.column() : columnOf(wrong.heading());
        if (column > 0) {
            bad(line, column, wrong.message());
        } else {
            faulty.add(new ImportReport.Bad(line, 0, wrong.heading(), wrong.message()));
        }
    }

    private int columnOf(String name) {
        return columns.entrySet().stream()
                .filter(each -> each.getValue().name().equals(name))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(0);
    }

    private void bad(long line, int column, String message) {
        String heading = column > 0 ? text.heading().cells().get(column - 1) : "";
        faulty.add(new ImportReport.Bad(line, column, heading, message));
    }
}
