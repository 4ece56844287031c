package dayglass.web.page.form;

import dayglass.base.Fault;
import dayglass.base.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What stands in the fields of a form, with what is wrong with it.
 *
 * @param values by the name of the field, in the form's order
 * @param faults each shown beside the field whose name is its pointer, or the nearest above it
 * @param refusal what is wrong with the whole; empty where nothing is
 */
public record Form(Map<String, String> values, List<Fault> faults, String refusal) {
    public static final Form EMPTY = new Form(Map.of(), List.of(), "");

    public Form {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        faults = List.copyOf(faults);
    }

    /** A form as sent: of a field given twice the last value, line ends as the browser's own. */
    public static Form sent(Map<String, List<String>> parameters) {
        Map<String, String> values = new LinkedHashMap<>();
        parameters.forEach((name, all) -> values.put(name, all.isEmpty() ? "" : all.get(all.size() - 1)));
        return new Form(values, List.of(), "");
    }

    public String value(String name) {
        return values.getOrDefault(name, "");
    }

    public boolean has(String name) {
        return !value(name).isBlank();
    }

    /** What is wrong with a field; empty text where nothing is. */
    public String fault(String name) {
        List<String> messages = new ArrayList<>();
        for (Fault fault : faults) {
            if (ownerOf(fault.pointer()).equals(name)) {
                messages.add(fault.message());
            }
        }
        return String.join("; ", messages);
    }

    /** What is wrong with no field in particular. */
    public List<String> otherFaults() {
        return faults.stream()
                .filter(fault -> ownerOf(fault.pointer()).isEmpty())
                .map(Fault::message)
                .toList();
    }

    public boolean faulty() {
        return !faults.isEmpty() || !refusal.isEmpty();
    }

    public Form with(Problem problem) {
        return new Form(
                values,
                new FaultPlaces(values).of(problem.faults()),
                problem.faults().isEmpty() ? problem.detail() : "");
    }

    public Form with(List<Fault> found) {
        return new Form(values, new FaultPlaces(values).of(found), "");
    }

    public Form with(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(values);
        more.put(name, value);
        return new Form(more, faults, refusal);
    }

    /** The field at a pointer, else the first field below it, else the nearest field above it or below that. */
    private String ownerOf(String pointer) {
        for (String at = pointer; !at.isEmpty(); at = parent(at)) {
            if (values.containsKey(at) || FaultPlaces.isFirstField(at)) {
                return at;
            }
            for (String name : values.keySet()) {
                if (name.startsWith(at + "/")) {
                    return name;
                }
            }
        }
        return "";
    }

    /** How many rows of a list are filled in, in a compact form. */
    public int rows(String list) {
        int rows = 0;
        for (String name : values.keySet()) {
            if (name.startsWith(list + "/")) {
                String number = name.substring(list.length() + 1).split("/", -1)[0];
                rows = number.matches("[0-9]{1,9}") ? Math.max(rows, Integer.parseInt(number) + 1) : rows;
            }
        }
        return rows;
    }

    private static String parent(String pointer) {
        int slash = pointer.lastIndexOf('/');
        return slash <= 0 ? "" : pointer.substring(0, slash);
    }
}
