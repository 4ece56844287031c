package dayglass.web.page;

import dayglass.cost.plan.Question;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Axis;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.costing.OptionWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What differs between what two costings were asked. */
public final class Changes {
    private Changes() {}

    /**
     * One difference.
     *
     * @param before what it was; {@code none} where it is new
     */
    public record Change(String what, String before, String after) {}

    static List<Change> between(Question before, Question after) {
        List<Change> changes = new ArrayList<>();
        compare(changes, "name", before.job(), after.job());
        compare(changes, "currency", before.currency().code(), after.currency().code());
        compare(
                changes,
                "discount rate, % a year",
                before.discountRate().value().toPlainString(),
                after.discountRate().value().toPlainString());
        compare(changes, "most cash for purchases", limit(before), limit(after));
        days(changes, before, after);
        compareAll(changes, "need of ", needs(before), needs(after));
        Map<String, Form> old = options(before);
        Map<String, Form> now = options(after);
        Set<String> ids = new LinkedHashSet<>(old.keySet());
        ids.addAll(now.keySet());
        for (String id : ids) {
            option(changes, id, old.get(id), now.get(id));
        }
        return changes;
    }

    private static String limit(Question question) {
        return question.cashLimit().map(Words::amount).orElse("no limit");
    }

    private static void compare(List<Change> changes, String what, String before, String after) {
        if (!before.equals(after)) {
            changes.add(new Change(what, before.isEmpty() ? "none" : before, after.isEmpty() ? "none" : after));
        }
    }

    private static void compareAll(
            List<Change> changes, String what, Map<String, String> before, Map<String, String> after) {
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        names.forEach(
                name -> compare(changes, what + name, before.getOrDefault(name, ""), after.getOrDefault(name, "")));
    }

    private static void days(List<Change> changes, Question before, Question after) {
        Set<LocalDate> dates = new TreeSet<>();
        before.schedule().horizon().stream().forEach(dates::add);
        after.schedule().horizon().stream().forEach(dates::add);
        for (LocalDate date : dates) {
            compare(changes, Words.date(date), Axis.useOn(before.schedule(), date), Axis.useOn(after.schedule(), date));
        }
    }

    private static Map<String, String> needs(Question question) {
        return question.needs().stream()
                .collect(Collectors.toMap(
                        Question.Need::slot,
                        need -> need.count() + " on " + Words.when(need),
                        (one, other) -> one + "; " + other,
                        LinkedHashMap::new));
    }

    private static Map<String, Form> options(Question question) {
        Map<String, Form> options = new LinkedHashMap<>();
        question.rentals().forEach(each -> options.put(each.id(), FormJson.form(OptionWriter.rental(each))));
        LocalDate first = question.schedule().horizon().from();
        question.purchases().forEach(each -> options.put(each.id(), FormJson.form(purchase(each, first))));
        question.owned().forEach(each -> options.put(each.id(), FormJson.form(OptionWriter.owned(each))));
        return options;
    }

    private static Json purchase(Question.Purchase purchase, LocalDate first) {
        return OptionWriter.purchase(purchase, first);
    }

    private static void option(
            List<Change> changes,
            String id,
            @org.jspecify.annotations.Nullable Form before,
            @org.jspecify.annotations.Nullable Form after) {
        if (before == null || after == null) {
            changes.add(new Change(
                    "option " + id,
                    before == null ? "not considered" : "considered",
                    after == null ? "not considered" : "considered"));
            return;
        }
        Set<String> fields = new LinkedHashSet<>(before.values().keySet());
        fields.addAll(after.values().keySet());
        for (String field : fields) {
            compare(changes, id + ", " + words(field, after, before), before.value(field), after.value(field));
        }
    }

    /** {@code /blocks/1/price} as {@code price of 7 days}. */
    private static String words(String field, Form after, Form before) {
        String[] steps = field.substring(1).split("/", -1);
        if (steps.length == 3 && steps[0].equals("blocks") && steps[2].equals("price")) {
            String days = after.value("/blocks/" + steps[1] + "/days");
            return "price of " + (days.isEmpty() ? before.value("/blocks/" + steps[1] + "/days") : days) + " days";
        }
        return String.join(" ", steps);
    }
}
