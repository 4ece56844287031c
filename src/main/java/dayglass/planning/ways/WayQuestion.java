package dayglass.planning.ways;

import dayglass.base.DateRange;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Question;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The questions that a way comes to. What the way leaves uncovered becomes slots of their own, so that other options
 * serve there and nowhere else.
 */
final class WayQuestion {
    /** Ends the name of a slot that other options complete. */
    static final String COMPLETED = ", completed";

    /** The slot that another one completes; itself where it does not. */
    static String slotOf(String slot) {
        return slot.endsWith(COMPLETED) ? slot.substring(0, slot.length() - COMPLETED.length()) : slot;
    }

    private final Question resolved;

    /**
     * @param resolved the job with every option that the way or its completion may take, named as the row is to be
     */
    WayQuestion(Question resolved) {
        this.resolved = resolved;
    }

    /** How many of each slot are asked for on one day at most, in the job's order. */
    static Map<String, Integer> wanted(Question question) {
        Map<String, Integer> wanted = new LinkedHashMap<>();
        demand(question)
                .forEach((slot, days) -> wanted.put(
                        slot, days.values().stream().max(Integer::compare).orElse(0)));
        return wanted;
    }

    /** How many of each slot are asked for on each day. */
    static Map<String, Map<LocalDate, Integer>> demand(Question question) {
        Map<String, Map<LocalDate, Integer>> demand = new LinkedHashMap<>();
        for (Question.Need need : question.needs()) {
            Map<LocalDate, Integer> days = demand.computeIfAbsent(need.slot(), slot -> new LinkedHashMap<>());
            dates(need, question.schedule()).forEach(day -> days.merge(day, need.count(), Integer::sum));
        }
        return demand;
    }

    private static List<LocalDate> dates(Question.Need need, Schedule schedule) {
        return schedule.horizon().stream()
                .filter(day -> need.dates().isEmpty()
                        ? schedule.scheduledUseOn(schedule.dayOf(day))
                                .filter(need.on()::contains)
                                .isPresent()
                        : need.dates().stream().anyMatch(range -> range.contains(day)))
                .toList();
    }

    /**
     * The way by itself.
     *
     * @param covers what each of its options serves, by the option's id; one that serves nothing is left out
     */
    Question alone(Map<String, Map<String, Integer>> covers) {
        return with(resolved.needs(), covers);
    }

    /**
     * The way with what it leaves uncovered served by others.
     *
     * @param others how many of each slot the options serve that may, by id
     */
    Question completed(
            Map<String, Map<String, Integer>> covers,
            List<Costing.Shortage> shortages,
            Map<String, Map<String, Integer>> others) {
        Map<String, Map<LocalDate, Integer>> own = demand(resolved);
        Map<String, Map<LocalDate, Integer>> lacking = new LinkedHashMap<>();
        for (Costing.Shortage shortage : shortages) {
            own.getOrDefault(shortage.slot(), new HashMap<>())
                    .merge(shortage.date(), shortage.missing(), (asked, missing) -> asked - missing);
            lacking.computeIfAbsent(shortage.slot() + COMPLETED, slot -> new LinkedHashMap<>())
                    .put(shortage.date(), shortage.missing());
        }
        List<Question.Need> needs = new ArrayList<>(needs(own));
        needs.addAll(needs(lacking));
        Map<String, Map<String, Integer>> all = new LinkedHashMap<>(covers);
        others.forEach((id, slots) -> {
            Map<String, Integer> completing = new HashMap<>();
            slots.forEach((slot, count) -> completing.put(slot + COMPLETED, count));
            completing.keySet().retainAll(lacking.keySet());
            all.putIfAbsent(id, completing);
        });
        return with(needs, all);
    }

    /** What each option says itself that it covers. */
    Map<String, Map<String, Integer>> declared() {
        Map<String, Map<String, Integer>> declared = new LinkedHashMap<>();
        resolved.rentals().forEach(option -> declared.put(option.id(), option.covers()));
        resolved.purchases().forEach(option -> declared.put(option.id(), option.covers()));
        resolved.owned().forEach(option -> declared.put(option.id(), option.covers()));
        return declared;
    }

    /** On which of the job's days only an option is there; empty where it is there on all. */
    Optional<String> daysOf(String option) {
        DateRange horizon = resolved.schedule().horizon();
        Optional<String> bought = resolved.purchases().stream()
                .filter(each -> each.id().equals(option))
                .filter(each -> each.availableFrom().isAfter(horizon.from()))
                .map(each -> "from " + each.availableFrom() + " on")
                .findFirst();
        return bought.or(() -> Stream.concat(
                        resolved.rentals().stream()
                                .filter(each -> each.id().equals(option))
                                .map(Question.Rental::available),
                        resolved.owned().stream()
                                .filter(each -> each.id().equals(option))
                                .map(Question.Owned::available))
                .filter(windows -> windows.stream().noneMatch(each -> holds(each, horizon)))
                .map(windows -> windows.stream()
                        .filter(each -> each.overlaps(horizon))
                        .map(each -> "from " + each.from() + " to " + each.lastDay())
                        .collect(Collectors.joining(" and ")))
                .filter(words -> !words.isEmpty())
                .findFirst());
    }

    private static boolean holds(DateRange window, DateRange horizon) {
        return !window.from().isAfter(horizon.from()) && !window.until().isBefore(horizon.until());
    }

    Set<String> slots() {
        return new LinkedHashSet<>(wanted(resolved).keySet());
    }

    /** Needs by dates, runs of days with one count together. */
    private static List<Question.Need> needs(Map<String, Map<LocalDate, Integer>> demand) {
        List<Question.Need> needs = new ArrayList<>();
        demand.forEach((slot, days) -> {
            Map<Integer, List<DateRange>> byCount = new LinkedHashMap<>();
            days.entrySet().stream()
                    .filter(day -> day.getValue() > 0)
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(day ->
                            extend(byCount.computeIfAbsent(day.getValue(), count -> new ArrayList<>()), day.getKey()));
            byCount.forEach((count, dates) -> needs.add(new Question.Need(slot, count, Set.of(), dates)));
        });
        return needs;
    }

    private static void extend(List<DateRange> runs, LocalDate day) {
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last).until().equals(day)) {
            runs.set(last, new DateRange(runs.get(last).from(), day.plusDays(1)));
        } else {
            runs.add(DateRange.inclusive(day, day));
        }
    }

    private Question with(List<Question.Need> needs, Map<String, Map<String, Integer>> covers) {
        return new Question(
                resolved.job(),
                resolved.currency(),
                resolved.discountRate(),
                resolved.cashLimit(),
                resolved.schedule(),
                needs,
                resolved.rentals().stream()
                        .filter(option -> serves(covers, option.id()))
                        .map(option -> new Question.Rental(
                                option.id(),
                                option.supplier(),
                                covers.getOrDefault(option.id(), Map.of()),
                                option.copies(),
                                option.terms(),
                                option.available(),
                                option.draws()))
                        .toList(),
                resolved.purchases().stream()
                        .filter(option -> serves(covers, option.id()))
                        .map(option -> new Question.Purchase(
                                option.id(),
                                option.supplier(),
                                covers.getOrDefault(option.id(), Map.of()),
                                option.copies(),
                                option.terms(),
                                option.availableFrom()))
                        .toList(),
                resolved.owned().stream()
                        .filter(option -> serves(covers, option.id()))
                        .map(option -> new Question.Owned(
                                option.id(), covers.getOrDefault(option.id(), Map.of()), option.available()))
                        .toList(),
                resolved.stock());
    }

    private static boolean serves(Map<String, Map<String, Integer>> covers, String id) {
        return !covers.getOrDefault(id, Map.of()).isEmpty();
    }
}
