package dayglass.planning;

import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.planning.Change.Subject;
import dayglass.wire.Json;
import dayglass.wire.costing.CostingRequestWriter;
import dayglass.wire.costing.OptionWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Two costings side by side: what changed in what was asked, and what that changed in the answer. */
public final class CompareCostings {
    private CompareCostings() {}

    /**
     * The differences.
     *
     * @param request terms, days, needs and options, in this order
     * @param answer amounts, then choices
     */
    public record Differences(List<Change> request, List<Change> answer) {
        public Differences {
            request = List.copyOf(request);
            answer = List.copyOf(answer);
        }
    }

    public static Differences between(KeptCosting before, KeptCosting after) {
        Question asked = before.question();
        Question asksNow = after.question();
        LocalDate firstBefore = asked.schedule().horizon().from();
        LocalDate firstAfter = asksNow.schedule().horizon().from();
        List<Change> request = new ArrayList<>();
        compare(Subject.TERM, terms(asked), terms(asksNow), request);
        compare(Subject.DAYS, days(asked.schedule()), days(asksNow.schedule()), request);
        compare(Subject.NEED, needs(asked), needs(asksNow), request);
        compareTrees(
                Subject.RENTAL,
                byId(asked.rentals().stream().map(OptionWriter::rental).toList()),
                byId(asksNow.rentals().stream().map(OptionWriter::rental).toList()),
                request);
        compareTrees(
                Subject.PURCHASE,
                byId(asked.purchases().stream()
                        .map(option -> OptionWriter.purchase(option, firstBefore))
                        .toList()),
                byId(asksNow.purchases().stream()
                        .map(option -> OptionWriter.purchase(option, firstAfter))
                        .toList()),
                request);
        compareTrees(
                Subject.OWNED,
                byId(asked.owned().stream().map(OptionWriter::owned).toList()),
                byId(asksNow.owned().stream().map(OptionWriter::owned).toList()),
                request);
        return new Differences(
                request,
                AnswerDifferences.between(before.answer().tree(), after.answer().tree()));
    }

    private static Map<String, String> terms(Question question) {
        Map<String, String> terms = new LinkedHashMap<>();
        terms.put("job", question.job());
        terms.put("currency", question.currency().code());
        terms.put("discountRatePercent", question.discountRate().value().toPlainString());
        question.cashLimit().ifPresent(limit -> terms.put("cashLimit", limit.amount()));
        return terms;
    }

    /** The use of each scheduled day. */
    private static Map<String, String> days(Schedule schedule) {
        Map<String, String> uses = new TreeMap<>();
        for (int day = 0; day < schedule.days(); day++) {
            Optional<DayUse> use = schedule.scheduledUseOn(day);
            if (use.isPresent()) {
                uses.put(schedule.dateOf(day).toString(), use.get().word());
            }
        }
        return uses;
    }

    /** All needs of each slot, as the request writes them without the slot. */
    private static Map<String, String> needs(Question question) {
        Map<String, String> needs = new LinkedHashMap<>();
        for (Question.Need need : question.needs()) {
            Map<String, String> leaves = Leaves.of(((Json.Arr) CostingRequestWriter.needs(List.of(need)))
                    .entries()
                    .get(0));
            leaves.remove("slot");
            needs.merge(need.slot(), String.join(", ", leaves.values()), (one, other) -> one + "; " + other);
        }
        return needs;
    }

    private static Map<String, Json> byId(List<Json> options) {
        Map<String, Json> byId = new LinkedHashMap<>();
        for (Json option : options) {
            byId.put(Leaves.of(option).getOrDefault("id", ""), option);
        }
        return byId;
    }

    static void compare(Subject subject, Map<String, String> before, Map<String, String> after, List<Change> into) {
        for (String name : union(before.keySet(), after.keySet())) {
            add(subject, name, "", before.get(name), after.get(name), into);
        }
    }

    private static void compareTrees(
            Subject subject, Map<String, Json> before, Map<String, Json> after, List<Change> into) {
        for (String name : union(before.keySet(), after.keySet())) {
            Map<String, String> was = Leaves.of(before.get(name));
            Map<String, String> is = Leaves.of(after.get(name));
            if (was.isEmpty() || is.isEmpty()) {
                add(subject, name, "", was.get("id"), is.get("id"), into);
                continue;
            }
            for (String part : union(was.keySet(), is.keySet())) {
                add(subject, name, part, was.get(part), is.get(part), into);
            }
        }
    }

    private static void add(
            Subject subject,
            String name,
            String part,
            @org.jspecify.annotations.Nullable String before,
            @org.jspecify.annotations.Nullable String after,
            List<Change> into) {
        if (!java.util.Objects.equals(before, after)) {
            into.add(new Change(subject, name, part, Optional.ofNullable(before), Optional.ofNullable(after)));
        }
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> all = new LinkedHashSet<>(one);
        all.addAll(other);
        return all;
    }
}
