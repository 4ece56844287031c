package dayglass.web.page.desk.price;

import dayglass.desk.price.Wish;
import dayglass.web.page.form.Form;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is wished for as the value of a button ({@code model/3}, {@code focalMm/40/circleMm/43.3}) and as fields of a row. */
final class WishField {
    private static final List<String> NAMES = List.of("model", "set", "unit", "focalMm", "circleMm");

    private WishField() {}

    static String value(Wish wish) {
        return wish.fold(
                model -> "model/" + model.model().number(),
                set -> "set/" + set.set().number(),
                unit -> "unit/" + unit.unit().number(),
                any -> "focalMm/" + any.focalMm().toPlainString()
                        + any.circleMm()
                                .map(circle -> "/circleMm/" + circle.toPlainString())
                                .orElse(""));
    }

    /** The form with a row more; with one more of it where the same is in a row already and there can be several. */
    static Form added(Form form, String value) {
        Map<String, String> wanted = fields(value);
        int rows = form.rows("/lines");
        for (int row = 0; row < rows; row++) {
            if (fields(form, row).equals(wanted)) {
                return wanted.containsKey("unit") ? form : oneMore(form, "/lines/" + row + "/count");
            }
        }
        Form more = form;
        for (Map.Entry<String, String> field : wanted.entrySet()) {
            more = more.with("/lines/" + rows + "/" + field.getKey(), field.getValue());
        }
        return wanted.isEmpty() ? form : more.with("/lines/" + rows + "/count", "1");
    }

    private static Form oneMore(Form form, String field) {
        String count = form.value(field).strip();
        return count.matches("[0-9]{1,3}") ? form.with(field, String.valueOf(Integer.parseInt(count) + 1)) : form;
    }

    /** Pairs of a name and what it says; whatever is no such pair is left out. */
    private static Map<String, String> fields(String value) {
        Map<String, String> fields = new LinkedHashMap<>();
        String[] parts = value.split("/", -1);
        for (int at = 0; at + 1 < parts.length; at += 2) {
            if (NAMES.contains(parts[at])) {
                fields.put(parts[at], parts[at + 1]);
            }
        }
        return fields;
    }

    private static Map<String, String> fields(Form form, int row) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String name : NAMES) {
            String field = "/lines/" + row + "/" + name;
            if (form.has(field)) {
                fields.put(name, form.value(field));
            }
        }
        return fields;
    }

    /** The hidden fields of a row. */
    static Map<String, String> hidden(Form form, int row) {
        Map<String, String> hidden = new LinkedHashMap<>();
        fields(form, row).forEach((name, value) -> hidden.put("/lines/" + row + "/" + name, value));
        return hidden;
    }
}
