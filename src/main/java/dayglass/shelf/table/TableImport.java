package dayglass.shelf.table;

import dayglass.base.Fault;
import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.sheet.CsvText;
import dayglass.wire.Checked;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Takes the rows of one table in turn, and says what came of each. A row of what is there already changes only the
 * columns that the table has; a row at fault changes nothing.
 */
final class TableImport<I extends Id, T> {
    private final RecordTable<I, T> table;
    private final CsvText text;
    private final Map<Integer, String> columns;

    private final List<ImportReport.Added> added = new ArrayList<>();
    private final List<ImportReport.Changed> changed = new ArrayList<>();
    private final List<ImportReport.Bad> faulty = new ArrayList<>();
    private final Map<List<String>, Long> seen = new LinkedHashMap<>();
    private int unchanged;

    /** @param columns the name of the field that a column, numbered from 1, is taken for */
    TableImport(RecordTable<I, T> table, CsvText text, Map<Integer, String> columns) {
        this.table = table;
        this.text = text;
        this.columns = columns;
    }

    /**
     * Takes every row.
     *
     * @param changes whether rows that differ from what is there change it
     */
    void takeRows(boolean changes) {
        text.rows().forEach(row -> take(row, changes));
    }

    ImportReport report(boolean preview, boolean changes) {
        List<ImportReport.Column> shown = new ArrayList<>();
        for (int at = 0; at < text.heading().cells().size(); at++) {
            shown.add(new ImportReport.Column(
                    at + 1, text.heading().cells().get(at), Optional.ofNullable(columns.get(at + 1))));
        }
        ImportReport.Done done = preview
                ? new ImportReport.Done(0, 0)
                : new ImportReport.Done(added.size(), changes ? changed.size() : 0);
        return new ImportReport(preview, text.separator(), shown, added, changed, unchanged, faulty, done);
    }

    private void take(CsvText.Row row, boolean changes) {
        int wanted = text.heading().cells().size();
        if (row.cells().size() != wanted) {
            bad(
                    row,
                    "",
                    "has " + row.cells().size() + " fields where the heading has " + wanted
                            + ": check its separators and quotes");
            return;
        }
        Map<String, String> cells = new LinkedHashMap<>();
        columns.forEach((number, field) -> cells.put(field, row.cells().get(number - 1)));
        List<String> key =
                table.keys().stream().map(name -> cells.getOrDefault(name, "")).toList();
        Long earlier = seen.putIfAbsent(key, row.line());
        if (earlier != null && key.stream().noneMatch(String::isBlank)) {
            bad(row, table.keys().get(0), "stands in line " + earlier + " already: keep one of the two rows");
            return;
        }
        Optional<Stored<I, T>> existing = table.existing().apply(cells);
        Map<String, String> whole = new LinkedHashMap<>(
                existing.map(stored -> table.cells(stored.facts())).orElse(Map.of()));
        whole.putAll(cells);
        Checked<T> checked = table.read(whole);
        List<Fault> faults = checked.fold(
                facts -> existing.isPresent()
                        ? changeTo(row, existing.get(), facts, changes)
                        : add(row, String.join(" ", key), facts),
                found -> found);
        faults.forEach(
                fault -> bad(row, table.fieldOf(fault).map(TableField::name).orElse(""), fault.message()));
    }

    private List<Fault> add(CsvText.Row row, String name, T facts) {
        return table.all()
                .add(facts)
                .fold(
                        stored -> {
                            added.add(new ImportReport.Added(row.line(), name));
                            return List.of();
                        },
                        TableImport::faults);
    }

    private List<Fault> changeTo(CsvText.Row row, Stored<I, T> stored, T facts, boolean changes) {
        if (facts.equals(stored.facts())) {
            unchanged++;
            return List.of();
        }
        Outcome<?> outcome =
                changes ? table.all().change(new Stored<>(stored.id(), stored.version(), facts)) : Outcome.done(stored);
        return outcome.fold(
                kept -> {
                    Map<String, String> before = table.cells(stored.facts());
                    String name = String.join(
                            " ",
                            table.keys().stream()
                                    .map(key -> before.getOrDefault(key, ""))
                                    .toList());
                    changed.add(new ImportReport.Changed(row.line(), name, differences(before, table.cells(facts))));
                    return List.of();
                },
                TableImport::faults);
    }

    private List<ImportReport.Difference> differences(Map<String, String> before, Map<String, String> after) {
        return table.fields().stream()
                .map(TableField::name)
                .filter(name -> !Objects.equals(before.get(name), after.get(name)))
                .map(name ->
                        new ImportReport.Difference(name, before.getOrDefault(name, ""), after.getOrDefault(name, "")))
                .toList();
    }

    private static List<Fault> faults(Problem problem) {
        return problem.faults().isEmpty() ? List.of(new Fault("", problem.detail())) : problem.faults();
    }

    private void bad(CsvText.Row row, String field, String message) {
        int column = columns.entrySet().stream()
                .filter(each -> each.getValue().equals(field))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(0);
        String heading = column > 0 ? text.heading().cells().get(column - 1) : field;
        faulty.add(new ImportReport.Bad(row.line(), column, heading, message));
    }
}
