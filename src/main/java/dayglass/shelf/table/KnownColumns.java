package dayglass.shelf.table;

import dayglass.sheet.CsvText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The columns of a table that is taken whole or not at all: each that has something in it must be understood, as what
 * was passed over would be lost unseen.
 */
final class KnownColumns {
    private final CsvText text;
    private final Map<Integer, TableField> fields = new LinkedHashMap<>();
    private final List<ImportReport.Bad> faulty = new ArrayList<>();

    /**
     * @param named the field that a heading stands for
     * @param what a row is
     */
    KnownColumns(CsvText text, Function<String, Optional<TableField>> named, String what) {
        this.text = text;
        List<String> headings = text.heading().cells();
        for (int number = 1; number <= headings.size(); number++) {
            take(number, named.apply(headings.get(number - 1)), what);
        }
        if (text.rows().isEmpty()) {
            faulty.add(new ImportReport.Bad(
                    text.heading().line(),
                    0,
                    "",
                    "is all there is: add a row for each " + what + " below the headings"));
        }
    }

    private void take(int number, Optional<TableField> field, String what) {
        if (field.isEmpty()) {
            if (!isEmpty(number)) {
                bad(number, "is no column of a " + what + ": rename it or take it out of the table");
            }
        } else if (fields.containsValue(field.get())) {
            bad(number, "stands in an earlier column already: keep one of the two");
        } else {
            fields.put(number, field.get());
        }
    }

    /** A column without a heading and without a cell is what spreadsheets leave behind. */
    private boolean isEmpty(int number) {
        return text.heading().cells().get(number - 1).isBlank()
                && text.rows().stream()
                        .allMatch(row -> row.cells().size() < number
                                || row.cells().get(number - 1).isBlank());
    }

    private void bad(int number, String message) {
        faulty.add(new ImportReport.Bad(
                text.heading().line(), number, text.heading().cells().get(number - 1), message));
    }

    /** What each column holds, by its number from 1. */
    Map<Integer, TableField> fields() {
        return fields;
    }

    /** What is wrong with the headings. */
    List<ImportReport.Bad> faulty() {
        return faulty;
    }

    List<ImportReport.Column> shown() {
        List<ImportReport.Column> shown = new ArrayList<>();
        List<String> headings = text.heading().cells();
        for (int number = 1; number <= headings.size(); number++) {
            shown.add(new ImportReport.Column(
                    number,
                    headings.get(number - 1),
                    Optional.ofNullable(fields.get(number)).map(TableField::name)));
        }
        return shown;
    }
}
