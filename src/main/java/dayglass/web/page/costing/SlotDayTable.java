package dayglass.web.page.costing;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Explanation;
import dayglass.cost.plan.Question;
import dayglass.web.page.picture.Axis;
import dayglass.web.page.picture.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What each slot costs on each day: a row a day, a column a slot, and the sums of both.
 *
 * @param unshared the choices that serve no slot on any day; with the rows it adds up to the total
 */
public record SlotDayTable(List<String> slots, List<Row> rows, List<String> sums, String unshared, String total) {
    public SlotDayTable {
        slots = List.copyOf(slots);
        rows = List.copyOf(rows);
        sums = List.copyOf(sums);
    }

    /**
     * A day.
     *
     * @param amounts one a slot, empty where it is not asked for
     */
    public record Row(String date, String use, List<String> amounts, String sum) {
        public Row {
            amounts = List.copyOf(amounts);
        }
    }

    static SlotDayTable of(Question question, Answer answer) {
        List<String> slots = slots(question);
        Money zero = Money.zero(question.currency());
        List<Explanation.SlotDay> all = answer.explanation().slotDays();
        Map<LocalDate, List<Explanation.SlotDay>> byDate = all.stream()
                .collect(Collectors.groupingBy(Explanation.SlotDay::date, TreeMap::new, Collectors.toList()));
        List<Row> rows = new ArrayList<>();
        byDate.forEach((date, shares) -> {
            Map<String, Money> bySlot = shares.stream()
                    .collect(Collectors.toMap(Explanation.SlotDay::slot, Explanation.SlotDay::amount, Money::plus));
            List<String> amounts = slots.stream()
                    .map(slot -> bySlot.containsKey(slot) ? Words.amount(bySlot.getOrDefault(slot, zero)) : "")
                    .toList();
            rows.add(new Row(
                    Words.date(date), Axis.useOn(question.schedule(), date), amounts, Words.amount(sum(shares, zero))));
        });
        List<String> sums = slots.stream()
                .map(slot -> Words.amount(sum(
                        all.stream().filter(each -> each.slot().equals(slot)).toList(), zero)))
                .toList();
        String unshared = answer.explanation().unshared().signum() == 0
                ? ""
                : Words.amount(answer.explanation().unshared());
        return new SlotDayTable(slots, rows, sums, unshared, Words.amount(answer.total()));
    }

    /** The slots in the order in which they are first asked for. */
    static List<String> slots(Question question) {
        return question.needs().stream().map(Question.Need::slot).distinct().toList();
    }

    private static Money sum(List<Explanation.SlotDay> shares, Money zero) {
        return shares.stream().map(Explanation.SlotDay::amount).reduce(zero, Money::plus);
    }
}
