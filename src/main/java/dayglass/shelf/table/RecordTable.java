package dayglass.shelf.table;

import dayglass.base.Fault;
import dayglass.base.Id;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.sheet.SheetTable;
import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One kind of record as rows of a table. A row is known by its keys, as what is there already is.
 *
 * @param fields every column, in the order of an export
 * @param keys the names of the fields by which a row is known
 * @param existing what is there with the keys that stand in these cells
 * @param text the JSON that the cells of a row stand for
 */
record RecordTable<I extends Id, T>(
        List<TableField> fields,
        List<String> keys,
        VersionedCollection<I, T> all,
        Function<Map<String, String>, Optional<Stored<I, T>>> existing,
        Text<T> text) {

    private static final int PAGE = 200;

    /** A record as JSON, in the form that a row can say: other things by their names, not their ids. */
    record Text<T>(Reader<T> reader, Function<T, Json.Obj> writer) {}

    /** The cells that have something in them, by the names of their fields. */
    Map<String, String> cells(T facts) {
        Json.Obj json = text.writer().apply(facts);
        Map<String, String> cells = new LinkedHashMap<>();
        for (TableField field : fields) {
            JsonTree.at(json, field.pointer()).ifPresent(value -> cells.put(field.name(), field.cell(value)));
        }
        return cells;
    }

    /** The record that the cells of a row say, or what is wrong with them; pointers are of the fields. */
    Checked<T> read(Map<String, String> cells) {
        JsonTree tree = new JsonTree();
        for (TableField field : fields) {
            if (!cells.getOrDefault(field.name(), "").isBlank()) {
                tree.put(field.pointer(), field.json(cells.getOrDefault(field.name(), "")));
            }
        }
        return text.reader().readAll(tree.json());
    }

    /** The field that a fault lies in: the one at its pointer, above or below it. */
    Optional<TableField> fieldOf(Fault fault) {
        String pointer = fault.pointer();
        return fields.stream()
                .filter(field -> pointer.equals(field.pointer()) || pointer.startsWith(field.pointer() + "/"))
                .findFirst()
                .or(() -> fields.stream()
                        .filter(field -> !pointer.isEmpty() && field.pointer().startsWith(pointer + "/"))
                        .findFirst());
    }

    /** Everything there is, as a table. */
    SheetTable<Map<String, String>> everything() {
        List<Map<String, String>> rows = new ArrayList<>();
        Optional<I> after = Optional.empty();
        List<Stored<I, T>> page;
        do {
            page = all.list(after, PAGE);
            page.forEach(stored -> rows.add(cells(stored.facts())));
            after = page.isEmpty()
                    ? after
                    : Optional.of(page.get(page.size() - 1).id());
        } while (page.size() == PAGE);
        return new SheetTable<>(
                fields.stream()
                        .map(field -> SheetTable.Column.<Map<String, String>>plain(field.name(), field::typed))
                        .toList(),
                rows);
    }
}
