package dayglass.shelf.table;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.base.Transactions;
import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.sheet.CsvText;
import dayglass.shelf.SupplierJson;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Brings in a table of suppliers, all of them or none. One who is there already is a fault: cards, offers and orders
 * know suppliers by their names, so a row must not change whom they mean.
 */
public final class SupplierTables {
    private static final TableField NAME =
            new TableField("name", "/name", TableField.Form.TEXT, List.of("supplier", "supplier name"));
    private static final TableField HOUSE =
            new TableField("house", "/house", TableField.Form.FLAG, List.of("this house"));

    private final Suppliers suppliers;
    private final Transactions transactions;

    public SupplierTables(Suppliers suppliers, Transactions transactions) {
        this.suppliers = suppliers;
        this.transactions = transactions;
    }

    /**
     * What a table of suppliers says.
     *
     * @param suppliers those that could be read, by the lines on which they stand
     * @param faulty what is wrong and where; while anything is, none is brought in
     */
    public record Report(
            char separator,
            List<ImportReport.Column> columns,
            Map<Long, Supplier> suppliers,
            List<ImportReport.Bad> faulty) {
        public Report {
            columns = List.copyOf(columns);
            suppliers = new LinkedHashMap<>(suppliers);
            faulty = List.copyOf(faulty);
        }

        public boolean isGood() {
            return faulty.isEmpty();
        }
    }

    /** Says what the table says. */
    public Outcome<Report> preview(CsvText text) {
        return transactions.tried(() -> Outcome.done(take(text)));
    }

    /** Adds every supplier; refused, with every fault by its line and column, where anything is wrong. */
    public Outcome<Report> bringIn(CsvText text) {
        return transactions.atomically(() -> {
            Report report = take(text);
            return report.isGood() ? Outcome.done(report) : Outcome.refused(ImportReport.refusal(report.faulty()));
        });
    }

    private Report take(CsvText sent) {
        CsvText text = withoutEmptyRows(sent);
        KnownColumns columns = new KnownColumns(text, SupplierTables::named, "supplier");
        Map<Integer, String> names = new LinkedHashMap<>();
        columns.fields().forEach((number, field) -> names.put(number, field.name()));
        TableImport<Supplier.Id, Supplier> rows = new TableImport<>(table(), text, names);
        rows.takeRows(false);
        ImportReport report = rows.report(true, false);
        Map<Long, Supplier> read = new LinkedHashMap<>();
        report.added()
                .forEach(row -> suppliers.named(row.name()).ifPresent(found -> read.put(row.line(), found.facts())));
        List<ImportReport.Bad> faulty = new ArrayList<>(columns.faulty());
        faulty.addAll(report.faulty());
        return new Report(text.separator(), columns.shown(), read, faulty);
    }

    /** Spreadsheets leave rows behind that have separators and nothing between them. */
    private static CsvText withoutEmptyRows(CsvText text) {
        return new CsvText(
                text.separator(),
                text.heading(),
                text.rows().stream()
                        .filter(row -> !row.cells().stream().allMatch(String::isBlank))
                        .toList());
    }

    private static Optional<TableField> named(String heading) {
        return List.of(NAME, HOUSE).stream()
                .filter(field -> field.isHeaded(heading))
                .findFirst();
    }

    private RecordTable<Supplier.Id, Supplier> table() {
        return new RecordTable<>(
                List.of(NAME, HOUSE),
                List.of(NAME.name()),
                suppliers,
                cells -> Optional.empty(),
                new RecordTable.Text<>(this::read, SupplierJson::write));
    }

    private Read<Supplier> read(Json json, Place place) {
        if (json instanceof Json.Obj row && row.members().get("house") instanceof Json.Text) {
            return place.member("house").fault("must be yes or no");
        }
        Read<Supplier> read = SupplierJson.reader().read(json, place);
        return read.isGood() ? whoIsNew(read.get(), place) : read;
    }

    private Read<Supplier> whoIsNew(Supplier supplier, Place place) {
        Optional<Stored<Supplier.Id, Supplier>> same = suppliers.named(supplier.name());
        if (same.isPresent()) {
            return place.member("name")
                    .fault("is there already, as supplier " + same.get().id().number()
                            + ": take the row out, or change the supplier itself");
        }
        Optional<Stored<Supplier.Id, Supplier>> house = supplier.house() ? suppliers.house() : Optional.empty();
        return house.isEmpty()
                ? Read.good(supplier)
                : place.member("house")
                        .fault("is " + house.get().facts().name()
                                + " already: one supplier at most is this house itself");
    }
}
