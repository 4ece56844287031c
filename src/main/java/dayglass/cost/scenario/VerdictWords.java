package dayglass.cost.scenario;

import dayglass.base.Money;
import dayglass.cost.ownership.RateOfReturn;
import dayglass.cost.verdict.BreakEven;
import dayglass.cost.verdict.BreakEvenRule;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** A verdict's figures in sentences, the same on the page and on the command line. */
public final class VerdictWords {
    private static final double LEAST_TOLD = 0.001;

    private VerdictWords() {}

    /** What to do, by how much. */
    public static String headline(Verdict verdict) {
        int months = verdict.question().choice().terms().termMonths();
        String over = " over " + months + " months and "
                + verdict.question().choice().daysPerYear().stripTrailingZeros().toPlainString()
                + " days of use a year.";
        int sign = verdict.saving().signum();
        if (sign == 0) {
            return "Owning and renting cost the same" + over;
        }
        Money saved = sign > 0 ? verdict.saving() : verdict.costOfOwning().minus(verdict.costOfRenting());
        return (sign > 0 ? "Buy: it costs " : "Rent: it costs ") + saved + " less than "
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

    /** A drawn number with at most one decimal. */
    public static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** What the break-even rule would have done, and what is claimed for it. */
    public static String rule(Verdict verdict, BreakEvenRule.Ruling ruling) {
        String done = ruling.buysOn()
                .map(day -> "It would have bought on " + day + ", after " + ruling.rentPaid() + " of rent, and cost ")
                .orElse("It would never have bought, and cost ");
        String claim = verdict.ruleIsGuaranteed()
                ? " Whatever comes, it never costs more than twice the best in hindsight."
                : " Its guarantee, at most twice the best in hindsight, is for a fixed purchase cost without running"
                        + " costs, loan or resale; here there are some, so none is claimed.";
        return done + ruling.cost() + "; the best in hindsight was " + ruling.hindsight() + "." + claim;
    }
}
