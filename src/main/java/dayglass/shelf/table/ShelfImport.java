package dayglass.shelf.table;

import dayglass.base.Fault;
import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Transactions;
import dayglass.inventory.Shelf;
import dayglass.sheet.CsvTable;
import dayglass.sheet.CsvText;
import dayglass.sheet.SheetBook;
import dayglass.sheet.SheetTable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Brings tables of units and lens models onto the shelf and takes them out again. What an export wrote changes nothing
 * when it comes back.
 */
public final class ShelfImport {
    private final Shelf shelf;
    private final Transactions transactions;
    private final Clock clock;

    /** @param clock dates the workbooks */
    public ShelfImport(Shelf shelf, Transactions transactions, Clock clock) {
        this.shelf = shelf;
        this.transactions = transactions;
        this.clock = clock;
    }

    /** What a table is of. */
    public enum What {
        UNITS("units"),
        LENS_MODELS("lens models");

        private final String word;

        What(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        public static Optional<What> of(String word) {
            return Arrays.stream(values())
                    .filter(what -> what.word.equals(word))
                    .findFirst();
        }
    }

    /**
     * A table to be brought in.
     *
     * @param columns the field that each column, numbered from 1, is taken for; empty to guess by the headings
     * @param applyChanges whether rows that differ from what is there change it
     */
    public record Table(What what, CsvText text, Optional<Map<Integer, String>> columns, boolean applyChanges) {}

    /** The names of the fields that a column can be taken for, in the order of an export. */
    public List<String> fields(What what) {
        return table(what).fields().stream().map(TableField::name).toList();
    }

    private RecordTable<?, ?> table(What what) {
        return what == What.UNITS ? ShelfTables.units(shelf) : ShelfTables.models(shelf);
    }

    /** Says what bringing the table in would do, by doing it and taking it back. */
    public Outcome<ImportReport> preview(Table table) {
        return transactions.tried(() -> take(table, true));
    }

    /** Brings the good rows in; refused only where the columns cannot be taken so. */
    public Outcome<ImportReport> bringIn(Table table) {
        return transactions.atomically(() -> take(table, false));
    }

    private Outcome<ImportReport> take(Table wanted, boolean preview) {
        return take(table(wanted.what()), wanted, preview);
    }

    private static <I extends Id, T> Outcome<ImportReport> take(
            RecordTable<I, T> table, Table wanted, boolean preview) {
        return columns(table, wanted.text(), wanted.columns()).map(columns -> {
            TableImport<I, T> rows = new TableImport<>(table, wanted.text(), columns);
            // A preview tries the changes too, so that what would forbid them is told before they are asked for.
            rows.takeRows(preview || wanted.applyChanges());
            return rows.report(preview, wanted.applyChanges());
        });
    }

    private static Outcome<Map<Integer, String>> columns(
            RecordTable<?, ?> table, CsvText text, Optional<Map<Integer, String>> given) {
        Map<Integer, String> columns =
                given.orElseGet(() -> guess(table, text.heading().cells()));
        List<Fault> faults = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        int place = 0;
        for (Map.Entry<Integer, String> column : columns.entrySet()) {
            String at = "/columns/" + place++;
            if (column.getKey() < 1 || column.getKey() > text.heading().cells().size()) {
                faults.add(new Fault(
                        at + "/number",
                        "must be a column of the table, 1 to "
                                + text.heading().cells().size()));
            }
            if (table.fields().stream().noneMatch(field -> field.name().equals(column.getValue()))) {
                faults.add(new Fault(at + "/field", "is no field: an export's headings are the fields' names"));
            } else if (!taken.add(column.getValue())) {
                faults.add(new Fault(at + "/field", "is taken from an earlier column already: leave one of them out"));
            }
        }
        for (String key : table.keys()) {
            if (!taken.contains(key)) {
                faults.add(
                        new Fault("/columns", "no column is the \"" + key + "\", by which rows are known: say which"));
            }
        }
        return faults.isEmpty() ? Outcome.done(columns) : Outcome.refused(Problem.faulty(faults));
    }

    /** What each column is taken for where nobody says so: what its heading sounds like; of two alike the first. */
    public Map<Integer, String> guess(What what, CsvText text) {
        return guess(table(what), text.heading().cells());
    }

    private static Map<Integer, String> guess(RecordTable<?, ?> table, List<String> headings) {
        Map<Integer, String> guessed = new LinkedHashMap<>();
        for (int at = 0; at < headings.size(); at++) {
            String heading = headings.get(at);
            int number = at + 1;
            table.fields().stream()
                    .filter(field -> field.isHeaded(heading))
                    .map(TableField::name)
                    .filter(name -> !guessed.containsValue(name))
                    .findFirst()
                    .ifPresent(name -> guessed.put(number, name));
        }
        return guessed;
    }

    static String sound(String heading) {
        return heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** Everything of one kind as CSV. */
    public byte[] csv(What what) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            CsvTable.write(table(what).everything(), out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory took no more", e);
        }
        return out.toByteArray();
    }

    /** Everything of one kind as a workbook that says when it was made. */
    public byte[] xlsx(What what) {
        SheetTable<?> everything = table(what).everything();
        return SheetBook.bytes(what.word(), clock.instant(), book -> book.table(what.word(), everything));
    }
}
