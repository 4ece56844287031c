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

/** Reads one table of rates, all of whose columns must be known: a term that was passed over would be a wrong price. */
final class CardImport {
    private final CsvText text;
    private final LetsCells things;
    private final Reader<Rate> reader;

    private final KnownColumns columns;
    private final List<CardReport.Line> rates = new ArrayList<>();
    private final List<ImportReport.Bad> faulty = new ArrayList<>();

    CardImport(CsvText text, LetsCells things, Currency currency) {
        this.text = text;
        this.things = things;
        this.reader = RateJson.reader(currency);
        this.columns = new KnownColumns(text, RateColumns::named, "rate");
        this.faulty.addAll(columns.faulty());
    }

    CardReport report() {
        Map<String, Long> ids = new LinkedHashMap<>();
        text.rows().forEach(row -> takeRow(row, ids));
        return new CardReport(text.separator(), columns.shown(), rates, faulty);
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
        columns.fields()
                .forEach(
                        (number, field) -> cells.take(number, field, row.cells().get(number - 1)));
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
        return columns.fields().entrySet().stream()
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
