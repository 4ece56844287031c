package dayglass.web.api.books;

import dayglass.base.Fault;
import dayglass.sheet.CsvText;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * Reads a table whose every row stands for a JSON object, by the reader of that object; what is wrong is told with its
 * line and its column's heading.
 *
 * @param headings what a column may be headed, and the member that it stands for; a slash parts a member from the object
 *     that it lies in
 * @param cell the JSON of a cell that is not empty, by its member
 */
record TableRows<T>(Map<String, String> headings, BiFunction<String, String, Json> cell, Reader<T> reader) {
    private static final int MOST_ROWS = 1_000;

    /** What a row says, with the line that it stands on. */
    record Row<T>(long line, T said) {}

    /** The rows; where one is bad, none are given and every fault is told. */
    List<Row<T>> read(CsvText csv, List<Fault> faults) {
        if (csv.rows().isEmpty() || csv.rows().size() > MOST_ROWS) {
            faults.add(new Fault("", "The table must have 1 to " + MOST_ROWS + " rows below its headings"));
        }
        List<String> members = members(csv, faults);
        List<Row<T>> rows = new ArrayList<>();
        if (faults.isEmpty()) {
            for (CsvText.Row row : csv.rows()) {
                if (row.cells().size() != members.size()) {
                    faults.add(new Fault(
                            "",
                            "Line " + row.line() + ": it has " + row.cells().size() + " fields where there are "
                                    + members.size() + " headings: check its separators and quotes"));
                    continue;
                }
                reader.readAll(json(members, row)).fold(said -> rows.add(new Row<>(row.line(), said)), wrong -> {
                    wrong.forEach(fault ->
                            faults.add(new Fault("", "Line " + row.line() + ", " + place(fault) + fault.message())));
                    return false;
                });
            }
        }
        return faults.isEmpty() ? List.copyOf(rows) : List.of();
    }

    private List<String> members(CsvText csv, List<Fault> faults) {
        List<String> members = new ArrayList<>();
        for (String heading : csv.heading().cells()) {
            String member = headings.getOrDefault(heading.strip().toLowerCase(Locale.ROOT), "");
            if (member.isEmpty()) {
                faults.add(new Fault(
                        "",
                        "Line 1: the heading \"" + heading + "\" is not known; known are "
                                + String.join(
                                        ", ",
                                        headings.keySet().stream().sorted().toList())));
            } else if (members.contains(member)) {
                faults.add(new Fault("", "Line 1: the heading \"" + heading + "\" stands there twice"));
            }
            members.add(member);
        }
        return members;
    }

    private String place(Fault fault) {
        String member = fault.pointer().isEmpty() ? "" : fault.pointer().substring(1);
        return headings.entrySet().stream()
                .filter(each -> each.getValue().equals(member))
                .map(each -> each.getKey() + ": ")
                .findFirst()
                .orElse(member.isEmpty() ? "" : member + ": ");
    }

    private Json json(List<String> members, CsvText.Row row) {
        Json.Members whole = Json.object();
        Map<String, Json.Members> inner = new LinkedHashMap<>();
        for (int at = 0; at < members.size(); at++) {
            String said = row.cells().get(at).strip();
            String[] steps = members.get(at).split("/", 2);
            if (!said.isEmpty()) {
                Json json = cell.apply(members.get(at), said);
                if (steps.length == 1) {
                    whole.put(steps[0], json);
                } else {
                    inner.computeIfAbsent(steps[0], name -> Json.object()).put(steps[1], json);
                }
            }
        }
        inner.forEach((name, object) -> whole.put(name, object.build()));
        return whole.build();
    }
}
