package dayglass.cost.scenario;

import dayglass.base.Money;
import dayglass.cost.ownership.RateOfReturn;
import dayglass.cost.verdict.BreakEven;
import dayglass.cost.verdict.BreakEvenRule;
import dayglass.cost.verdict.NestedPermits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A verdict's figures in sentences, the same on the page and on the command line but for how amounts and days are
 * written there.
 */
public record VerdictWords(Function<Money, String> money, Function<LocalDate, String> day) {
    private static final double LEAST_TOLD = 0.001;

    /** What to do, by how much. */
    public String headline(Verdict verdict) {
        int months = verdict.question().choice().terms().termMonths();
        String over = " over " + months + " months and "
                + plain(verdict.question().choice().daysPerYear())
                + " days of use a year.";
        int sign = verdict.saving().signum();
        if (sign == 0) {
            return "Owning and renting cost the same" + over;
        }
        Money saved = sign > 0 ? verdict.saving() : verdict.costOfOwning().minus(verdict.costOfRenting());
        return (sign > 0 ? "Buy: it costs " : "Rent: it costs ") + money.apply(saved) + " less than "
                + (sign > 0 ? "renting" : "owning") + over;
    }

    /** One text a crossing, or why there is none. */
    public static List<String> crossings(BreakEven found) {
        return found.crossings().isEmpty()
                ? List.of("none: " + found.none())
                : found.crossings().stream().map(VerdictWords::crossing).toList();
    }

    private static String crossing(BreakEven.Crossing crossing) {
        BigDecimal before = crossing.before().place();
        BigDecimal after = crossing.after().place();
        String place = before.compareTo(after) == 0
                ? before.toPlainString()
                : crossing.at().toPlainString() + ", between " + before.toPlainString() + " and "
                        + after.toPlainString();
        return place + "; beyond it " + (crossing.owningIsCheaperBeyond() ? "buy" : "rent");
    }

    public static String payback(Verdict verdict) {
        return verdict.against()
                .paybackMonth()
                .map(month -> "in month " + month)
                .orElse("never, not even with the sale");
    }

    /** The rates a year in per cent. */
    public static String returns(RateOfReturn returns) {
        String rates = returns.percentPerYear(2).stream()
                .map(rate -> rate.toPlainString() + " %")
                .collect(Collectors.joining(" or "));
        String none = rates.isEmpty() ? "none" : rates + " a year";
        return returns.all() ? none : none + " (there may be more)";
    }

    /** That not all draws were done; empty text where they were. */
    public static String stopped(Verdict verdict) {
        int asked = verdict.question()
                .uncertainty()
                .map(unsure -> unsure.sample().draws())
                .orElse(0);
        int done = verdict.findings().map(Findings::draws).orElse(0);
        return done == asked ? "" : "Stopped after " + done + " of " + asked + " draws: how sure it is rests on those.";
    }

    /** A probability in per cent, with one decimal; what is not sure is not told as 0 or 100. */
    public static String percent(double share) {
        if (share > 0 && share < LEAST_TOLD) {
            return "less than 0.1 %";
        }
        if (share < 1 && share > 1 - LEAST_TOLD) {
            return "more than 99.9 %";
        }
        return new BigDecimal(share)
                        .movePointRight(2)
                        .setScale(1, RoundingMode.HALF_UP)
                        .toPlainString()
                + " %";
    }

    /** A number without the noughts that say nothing. */
    public static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    /** A drawn number with at most one decimal. */
    public static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** What the break-even rule would have done, and what is claimed for it. */
    public String rule(Verdict verdict, BreakEvenRule.Ruling ruling) {
        String done = ruling.buysOn()
                .map(on -> "It would have bought on " + day.apply(on) + ", after " + money.apply(ruling.rentPaid())
                        + " of rent, and cost ")
                .orElse("It would never have bought, and cost ");
        return done + money.apply(ruling.cost()) + "; the best in hindsight was " + money.apply(ruling.hindsight())
                + "." + claim(verdict, "twice");
    }

    /** The same of nested permits. */
    public String nested(Verdict verdict, NestedPermits.Ruling ruling) {
        String rented = Stream.of(new Length(1, "day"), new Length(7, "week"), new Length(28, "four weeks"))
                .map(length -> length.counted(ruling))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        String done = ruling.buysOn()
                .map(on -> "It would have bought on " + day.apply(on) + (rented.isEmpty() ? "" : ", after " + rented))
                .orElse("It would never have bought, but rented " + rented);
        return done + ", and cost " + money.apply(ruling.cost()) + "; the best in hindsight for the same weeks was "
                + money.apply(ruling.hindsight()) + ", with rentals from any day "
                + money.apply(ruling.hindsightAnyDay())
                + ". Prices of blocks alone, without trips and add-ons."
                + claim(verdict, ruling.kinds() + " times");
    }

    private record Length(int days, String one) {
        String counted(NestedPermits.Ruling ruling) {
            long count = ruling.taken().stream()
                    .flatMap(each -> each.days().stream())
                    .filter(range -> range.days() == days)
                    .count();
            return count == 0 ? "" : count + " × a " + one.replace("four", "spell of four");
        }
    }

    private static String claim(Verdict verdict, String factor) {
        return verdict.ruleIsGuaranteed()
                ? " Whatever comes, it never costs more than " + factor + " the best in hindsight."
                : " Its guarantee, at most " + factor + " the best in hindsight, is for a fixed purchase cost without"
                        + " running costs, loan or resale; here there are some, so none is claimed.";
    }
}
