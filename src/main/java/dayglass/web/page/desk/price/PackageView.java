package dayglass.web.page.desk.price;

import dayglass.desk.find.Find;
import dayglass.desk.price.Alternatives.Alternative;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.words.DateWords;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the page of a package shows.
 *
 * @param days how the words for the days are understood; empty where they are not
 */
public record PackageView(
        Form form,
        List<Found> finds,
        List<Row> rows,
        String days,
        DayCalendar calendar,
        Optional<PriceView> price,
        List<Said> alternatives,
        Usual usual) {
    public PackageView {
        finds = List.copyOf(finds);
        rows = List.copyOf(rows);
        alternatives = List.copyOf(alternatives);
    }

    /** Something that can be put into the package. */
    public record Found(String value, String name, String facts, String free, boolean none) {
        static Found of(Find find) {
            return new Found(
                    WishField.value(find.wish()),
                    find.name(),
                    find.facts(),
                    find.free().map(Found::said).orElse(""),
                    find.free().filter(free -> free.free() == 0).isPresent());
        }

        private static String said(Find.Free free) {
            return free.there() == 0 ? "none on the shelf" : free.free() + " of " + free.there() + " free then";
        }
    }

    /**
     * A line of the package.
     *
     * @param hidden the fields that say what it asks for
     * @param counted whether there can be several of it
     */
    public record Row(int number, String name, Map<String, String> hidden, boolean counted) {
        public Row {
            hidden = Map.copyOf(hidden);
        }

        public String field(String name) {
            return "/lines/" + number + "/" + name;
        }
    }

    /** Something worth saying aloud, with the address of the package that it proposes. */
    public record Said(String words, String total, String address) {
        static Said of(Form form, Alternative other, PackagePrice price) {
            Map<String, String> fields = new LinkedHashMap<>(form.values());
            List.of("add", "first", "drop", "day", "first-day", "month", "once").forEach(fields::remove);
            fields.put("/dates", DateWords.say(other.schedule()));
            return new Said(
                    other.words(),
                    Words.money(other.total()) + ", " + Words.difference(price.total(), other.total()),
                    "/desk/package?" + query(fields));
        }

        private static String query(Map<String, String> fields) {
            return fields.entrySet().stream()
                    .filter(field -> !field.getValue().isBlank())
                    .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                    .collect(Collectors.joining("&"));
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8);
        }
    }

    /** What a quote says where nothing else is typed. */
    public record Usual(String validUntil, String deposit, String currency) {}

    /** A revision of this quote is being made, not a new one. */
    public boolean revises() {
        return form.has("quote");
    }
}
