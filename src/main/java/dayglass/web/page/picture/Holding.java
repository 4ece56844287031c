package dayglass.web.page.picture;

import dayglass.base.DateRange;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalCharge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One thing held over a run of days, as a picture shows it.
 *
 * @param kind {@code rented}, {@code bought} or {@code owned}
 * @param blocks how a rental is charged, in order; empty for what is not rented
 */
record Holding(String option, String kind, String from, DateRange dates, List<Block> blocks) {
    Holding {
        blocks = List.copyOf(blocks);
    }

    /** A block as charged; it may run past the end of the period. */
    record Block(DateRange dates, String name, String price) {}

    /** Everything that the choices hold, cut to the horizon; an owned unit once for each window it is there. */
    static List<Holding> of(Question question, List<Choice> choices) {
        List<Holding> held = new ArrayList<>();
        for (Choice choice : choices) {
            if (choice instanceof Choice.Rent rent) {
                held.add(rented(rent));
            } else if (choice instanceof Choice.Buy buy) {
                new DateRange(buy.from(), LocalDate.MAX)
                        .within(question.schedule().horizon())
                        .map(dates -> new Holding(buy.option(), "bought", buy.supplier(), dates, List.of()))
                        .ifPresent(held::add);
            } else {
                owned(question, choice.option(), held);
            }
        }
        return held;
    }

    private static Holding rented(Choice.Rent rent) {
        List<Block> blocks = rent.charge().blocks().stream()
                .map(block -> new Block(
                        new DateRange(block.from(), block.from().plusDays(block.days())),
                        name(block),
                        Words.amount(block.price())))
                .toList();
        return new Holding(rent.option(), "rented", rent.supplier(), rent.dates(), blocks);
    }

    private static void owned(Question question, String option, List<Holding> held) {
        question.owned().stream()
                .filter(unit -> unit.id().equals(option))
                .flatMap(unit -> unit.available().isEmpty()
                        ? List.of(question.schedule().horizon()).stream()
                        : unit.available().stream())
                .flatMap(window -> window.within(question.schedule().horizon()).stream())
                .forEach(dates -> held.add(new Holding(option, "owned", "own shelf", dates, List.of())));
    }

    /** How a block is called: {@code 7 days}, {@code extra day}. */
    static String name(RentalCharge.BlockUsed block) {
        return block.extraDay() ? "extra day" : Words.days(block.days());
    }

    /** How many of each slot every option covers. */
    static Map<String, Map<String, Integer>> covers(Question question) {
        Map<String, Map<String, Integer>> covers = new LinkedHashMap<>();
        question.rentals().forEach(each -> covers.put(each.id(), each.covers()));
        question.purchases().forEach(each -> covers.put(each.id(), each.covers()));
        question.owned().forEach(each -> covers.put(each.id(), each.covers()));
        return covers;
    }
}
