package dayglass.web.page.picture;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The least totals of the ways of doing it, as bars from nought.
 *
 * @param nought where nought lies, in per cent of the width from the left
 */
public record ComparisonPicture(String nought, List<Bar> bars) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public ComparisonPicture {
        bars = List.copyOf(bars);
    }

    /**
     * One way.
     *
     * @param from where its bar begins, in per cent of the width
     * @param width of its bar, likewise; empty where there is none
     * @param amount the least total, or that it cannot be done
     * @param note what more there is to say: how much dearer than the plan, or how far it is proved
     */
    public record Bar(String key, String name, String from, Optional<String> width, String amount, String note) {
        public boolean best() {
            return key.equals("best");
        }
    }

    private record Way(String key, String name, Answer.Row row) {}

    public static ComparisonPicture of(Answer answer) {
        Answer.Comparison rows = answer.comparison();
        List<Way> ways = List.of(
                new Way("ownedOnly", "Own only", rows.ownedOnly()),
                new Way("dayRateOnly", "Rent by the day", rows.dayRateOnly()),
                new Way("weekRateOnly", "Rent by the week", rows.weekRateOnly()),
                new Way("rentOnly", "Rent only, any block", rows.rentOnly()),
                new Way("buyOnly", "Buy only", rows.buyOnly()),
                new Way("best", "This plan", rows.best()));
        Money zero = Money.zero(answer.total().currency());
        List<Money> totals =
                ways.stream().flatMap(way -> way.row().total().stream()).toList();
        Money least = totals.stream().reduce(zero, (a, b) -> a.compareTo(b) < 0 ? a : b);
        Money most = totals.stream().reduce(zero, (a, b) -> a.compareTo(b) > 0 ? a : b);
        Money span = most.minus(least);
        List<Bar> bars = new ArrayList<>();
        for (Way way : ways) {
            bars.add(bar(way, answer, least, span));
        }
        return new ComparisonPicture(percent(zero.minus(least), span), bars);
    }

    private static Bar bar(Way way, Answer answer, Money least, Money span) {
        Money zero = Money.zero(answer.total().currency());
        return way.row()
                .total()
                .map(total -> {
                    Money start = total.signum() < 0 ? total : zero;
                    Money length = total.signum() < 0 ? zero.minus(total) : total;
                    return new Bar(
                            way.key(),
                            way.name(),
                            percent(start.minus(least), span),
                            Optional.of(percent(length, span)),
                            Words.amount(total),
                            note(way, total, answer));
                })
                .orElseGet(() -> new Bar(way.key(), way.name(), "0", Optional.empty(), missing(way), ""));
    }

    private static String missing(Way way) {
        return way.row().bound().isPresent() ? "not found in the time" : "cannot be done";
    }

    private static String note(Way way, Money total, Answer answer) {
        if (way.row().cutShort()) {
            return "best found in the time; at least "
                    + Words.amount(way.row().bound().orElseThrow());
        }
        return way.key().equals("best") ? "" : Words.difference(answer.total(), total);
    }

    /** Exact to a thousandth of a per cent. */
    static String percent(Money part, Money whole) {
        if (whole.signum() == 0) {
            return "0";
        }
        return part.major()
                .multiply(HUNDRED)
                .divide(whole.major(), MathContext.DECIMAL64)
                .setScale(3, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
