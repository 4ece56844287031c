package dayglass.web.page.desk;

import dayglass.base.Money;
import dayglass.catalogue.Rate;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.rental.RentalTerms.Block;
import dayglass.shelf.LetsNames;
import dayglass.web.page.RateWords;
import dayglass.web.page.picture.Words;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A rate card on one sheet: a line for each rate. Terms that need words are written once below and named by a number.
 *
 * @param usual the headings of the usual blocks that a rate of the card has
 * @param others whether a rate has blocks besides those
 * @param notes the terms in words; a line names them from 1
 */
public record RateSheet(List<String> usual, boolean others, List<Line> lines, List<String> notes) {
    private static final List<Usual> USUAL = List.of(
            new Usual("day", 1, Optional.empty()),
            new Usual("week", 7, Optional.empty()),
            new Usual("four weeks", 28, Optional.empty()),
            new Usual("weekend", 3, Optional.of(DayOfWeek.FRIDAY)));

    public RateSheet {
        usual = List.copyOf(usual);
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }

    private record Usual(String heading, int days, Optional<DayOfWeek> startsOn) implements Predicate<Block> {
        @Override
        public boolean test(Block block) {
            return block.days() == days && block.startsOn().equals(startsOn);
        }
    }

    /**
     * One rate.
     *
     * @param thing what it is for, else which slots it serves
     * @param prices of the usual blocks, in the order of their headings; empty where it has none
     * @param others further blocks
     * @param notes the numbers of those that belong to it
     */
    public record Line(
            String code,
            String thing,
            List<String> prices,
            String others,
            String extraDay,
            String longHire,
            String minimum,
            String trip,
            String notes) {
        public Line {
            prices = List.copyOf(prices);
        }
    }

    static RateSheet of(List<Rate> rates, LetsNames names) {
        List<Usual> usual = USUAL.stream()
                .filter(each -> rates.stream()
                        .anyMatch(rate -> rate.terms().blocks().stream().anyMatch(each)))
                .toList();
        List<String> notes = new ArrayList<>();
        List<Line> lines =
                rates.stream().map(rate -> line(rate, usual, names, notes)).toList();
        return new RateSheet(
                usual.stream().map(Usual::heading).toList(),
                lines.stream().anyMatch(line -> !line.others().isEmpty()),
                lines,
                notes);
    }

    private static Line line(Rate rate, List<Usual> usual, LetsNames names, List<String> notes) {
        RentalTerms terms = rate.terms();
        return new Line(
                rate.code(),
                rate.lets().map(names::said).orElseGet(() -> Words.covers(rate.covers())),
                usual.stream().map(each -> prices(terms.blocks(), each)).toList(),
                terms.blocks().stream()
                        .filter(block -> usual.stream().noneMatch(each -> each.test(block)))
                        .map(block -> RateWords.block(block) + " " + Words.amount(block.price()))
                        .collect(Collectors.joining(", ")),
                terms.extraDay()
                        .map(extra -> Words.amount(extra.price()) + " after " + Words.days(extra.afterDays()))
                        .orElse(""),
                terms.longHire().stream()
                        .map(each -> each.percent().value().toPlainString() + " % from " + Words.days(each.fromDays()))
                        .collect(Collectors.joining(", ")),
                unlessZero(terms.minimumCharge()),
                unlessZero(terms.perTrip()),
                numbers(rate, notes));
    }

    /** One price, or each of several that a rate has for the same days. */
    private static String prices(List<Block> blocks, Usual usual) {
        return blocks.stream()
                .filter(usual)
                .map(block -> Words.amount(block.price()))
                .collect(Collectors.joining(", "));
    }

    private static String unlessZero(Money amount) {
        return amount.signum() == 0 ? "" : Words.amount(amount);
    }

    private static String numbers(Rate rate, List<String> notes) {
        return notes(rate)
                .map(note -> {
                    if (!notes.contains(note)) {
                        notes.add(note);
                    }
                    return String.valueOf(notes.indexOf(note) + 1);
                })
                .collect(Collectors.joining(", "));
    }

    private static Stream<String> notes(Rate rate) {
        List<String> said = new ArrayList<>();
        rate.terms()
                .addOns()
                .forEach(addOn -> said.add(RateWords.addOn(rate, addOn)
                        + (rate.mark(addOn.name()).word().equals("charge") ? " (charge)" : "")));
        String factors = rate.terms().dayFactors().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(each -> each.getKey().word() + " × " + each.getValue().toPlainString())
                .collect(Collectors.joining(", "));
        if (!factors.isEmpty()) {
            said.add("one-day prices by the day's use: " + factors);
        }
        if (!rate.available().isEmpty()) {
            said.add("to be had " + Words.dates(rate.available()));
        }
        if (rate.copies() > 1) {
            said.add("up to " + rate.copies() + " at once");
        }
        if (rate.lets().isPresent() && !rate.covers().isEmpty()) {
            said.add("serves " + Words.covers(rate.covers()) + " in a job");
        }
        return said.stream();
    }
}
