package dayglass.web.page.form;

import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Between a form and the JSON it stands for. Blank fields are left out, rows that are blank altogether too. Three kinds
 * of fields stand for more than one value: a list of words is one field with commas between them, a list of phrases one
 * with a line each, and what is covered is rows of a slot and a count. A ticked box
 * is {@code true}.
 */
public final class FormJson {
    private static final Set<String> WHOLE = Set.of(
            "count",
            "copies",
            "days",
            "prepDays",
            "afterDays",
            "fromDays",
            "termMonths",
            "months",
            "everyMonths",
            "everyDaysOut",
            "daysPerWeek",
            "draws",
            "seed",
            "years",
            "unitId",
            "jobId",
            "line",
            "modelId",
            "model",
            "set",
            "unit",
            "by",
            "charge",
            "validDays",
            "weightG",
            "photositesWide",
            "photositesHigh",
            "iso",
            "payloadG",
            "grade",
            "lensModel",
            "attachment",
            "irisBlades",
            "flare",
            "outOfFocusShape",
            "distortion",
            "edgeSharpness",
            "colour");
    private static final Set<String> TICKED = Set.of("insured", "taxed");
    private static final Pattern WORDS =
            Pattern.compile("/addOns/[0-9]+/on|/jobs/[0-9]+/(?:perYear|days)Spread/values");
    private static final Set<String> LINES = Set.of("/mounts", "/tags", "/accessories", "/cautions");
    private static final String COVERS = "covers";
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}");
    private static final Pattern ROW = Pattern.compile("(/.*)/([0-9]{1,9})/([^/]*)");
    private static final Pattern WHOLE_NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)");

    private FormJson() {}

    /** The same form with its rows numbered without gaps, so that pointers into the JSON are names of fields. */
    public static Form compact(Form form) {
        Map<String, SortedSet<Integer>> rows = new LinkedHashMap<>();
        form.values().forEach((name, value) -> {
            Matcher row = ROW.matcher(name);
            if (row.matches() && !value.isBlank()) {
                rows.computeIfAbsent(row.group(1), list -> new TreeSet<>()).add(Integer.valueOf(row.group(2)));
            }
        });
        Map<String, String> values = new LinkedHashMap<>();
        form.values().forEach((name, value) -> {
            Matcher row = ROW.matcher(name);
            if (!row.matches()) {
                values.put(name, value);
                return;
            }
            SortedSet<Integer> filled = rows.getOrDefault(row.group(1), new TreeSet<>());
            Integer number = Integer.valueOf(row.group(2));
            if (filled.contains(number)) {
                values.put(row.group(1) + "/" + filled.headSet(number).size() + "/" + row.group(3), value);
            }
        });
        return new Form(values, form.faults(), form.refusal());
    }

    /** The JSON that a compact form stands for. */
    public static Json read(Form form) {
        Tree root = new Tree();
        form.values().forEach((name, value) -> {
            if (name.startsWith("/") && !value.isBlank()) {
                root.put(name.substring(1).split("/", -1), 0, leaf(name, value.strip()));
            }
        });
        return root.json("");
    }

    /** What a form stands for, with faults told in words for whoever fills it in. */
    public static <T> Checked<T> read(Form compact, Reader<T> reader) {
        return reader.readAt("", read(compact), Listener.PERSON);
    }

    private static Json leaf(String name, String value) {
        String last = name.substring(name.lastIndexOf('/') + 1);
        if (WORDS.matcher(name).matches()) {
            return texts(value.split(",", -1));
        }
        if (LINES.contains(name)) {
            return texts(value.split("\\R", -1));
        }
        if (TICKED.contains(last)) {
            return Json.bool(value.equals("yes") || value.equals("true"));
        }
        return WHOLE.contains(last) && WHOLE_NUMBER.matcher(value).matches() ? new Json.Num(value) : Json.text(value);
    }

    private static Json texts(String[] parts) {
        return Json.texts(Stream.of(parts)
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList());
    }

    /** The fields of facts, as they are written in the contract. */
    public static <T> Form form(BiConsumer<Json.Members, T> writer, T facts) {
        Json.Members members = Json.object();
        writer.accept(members, facts);
        return form(members.build());
    }

    /** The fields of a JSON object of the contract, by their pointers. */
    public static Form form(Json json) {
        Map<String, String> values = new LinkedHashMap<>();
        flatten("", json, values);
        return new Form(values, List.of(), "");
    }

    private static void flatten(String pointer, Json json, Map<String, String> values) {
        if (json instanceof Json.Obj object && pointer.equals("/" + COVERS)) {
            int row = 0;
            for (Map.Entry<String, Json> entry : object.members().entrySet()) {
                values.put(pointer + "/" + row + "/slot", entry.getKey());
                flatten(pointer + "/" + row++ + "/count", entry.getValue(), values);
            }
        } else if (json instanceof Json.Obj object) {
            object.members().forEach((name, value) -> flatten(pointer + "/" + name, value, values));
        } else if (json instanceof Json.Arr list && (WORDS.matcher(pointer).matches() || LINES.contains(pointer))) {
            values.put(
                    pointer,
                    String.join(
                            LINES.contains(pointer) ? "\n" : ", ",
                            list.entries().stream()
                                    .map(each -> ((Json.Text) each).value())
                                    .toList()));
        } else if (json instanceof Json.Arr list) {
            for (int i = 0; i < list.entries().size(); i++) {
                flatten(pointer + "/" + i, list.entries().get(i), values);
            }
        } else if (json instanceof Json.Text text) {
            values.put(pointer, text.value());
        } else if (json instanceof Json.Bool ticked && ticked.value()) {
            values.put(pointer, "yes");
        } else if (json instanceof Json.Num number) {
            values.put(pointer, number.literal());
        }
    }

    /** An object or list in the making: a list where its names are row numbers. */
    private static final class Tree {
        private final Map<String, Tree> branches = new LinkedHashMap<>();
        private final Map<String, Json> leaves = new LinkedHashMap<>();

        void put(String[] steps, int at, Json leaf) {
            if (at == steps.length - 1) {
                leaves.put(steps[at], leaf);
            } else {
                branches.computeIfAbsent(steps[at], name -> new Tree()).put(steps, at + 1, leaf);
            }
        }

        Json json(String name) {
            boolean rows = leaves.isEmpty()
                    && !branches.isEmpty()
                    && branches.keySet().stream()
                            .allMatch(each -> NUMBER.matcher(each).matches());
            if (rows && name.equals(COVERS)) {
                Json.Members covers = Json.object();
                branches.values().forEach(row -> covers.put(row.text("slot"), row.leaf("count")));
                return covers.build();
            }
            if (rows) {
                return Json.list(
                        branches.values().stream().map(row -> row.json("")).toList());
            }
            Json.Members members = Json.object();
            leaves.forEach(members::put);
            branches.forEach((each, branch) -> members.put(each, branch.json(each)));
            return members.build();
        }

        private String text(String name) {
            return leaf(name) instanceof Json.Text text ? text.value() : "";
        }

        private Json leaf(String name) {
            return leaves.getOrDefault(name, Json.nothing());
        }
    }
}
