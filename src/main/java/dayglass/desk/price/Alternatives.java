package dayglass.desk.price;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is worth saying aloud of a price: more days for nothing or for less, a day less that saves much. Each is found by
 * pricing the very package that it proposes.
 */
public final class Alternatives {
    private static final int MOST_MORE_DAYS = 7;

    private final PackagePricing pricing;
    private final PackagePrice price;

    private Alternatives(PackagePricing pricing, PackagePrice price) {
        this.pricing = pricing;
        this.price = price;
    }

    /**
     * One of them.
     *
     * @param schedule the days of use that it proposes
     * @param total what it comes to
     */
    public record Alternative(String words, Schedule schedule, Money total) {}

    /** Those of a price, the best for the customer first; none where something is missing. */
    static List<Alternative> of(PackagePrice price, PackagePricing pricing) {
        if (!price.whole() || price.lines().isEmpty()) {
            return List.of();
        }
        Alternatives alternatives = new Alternatives(pricing, price);
        return Stream.of(alternatives.longer(), alternatives.shorter())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Alternative> longer() {
        Optional<Alternative> best = Optional.empty();
        Money least = price.total();
        for (int more = 1; more <= MOST_MORE_DAYS; more++) {
            Optional<Alternative> other = moved(more);
            if (other.isPresent() && other.get().total().compareTo(least) <= 0) {
                least = other.get().total();
                best = other;
            }
        }
        return best;
    }

    private Optional<Alternative> shorter() {
        return moved(-1).filter(other -> other.total().compareTo(price.total()) < 0);
    }

    /** The package with its last span so many days longer; empty where that cannot be had whole. */
    private Optional<Alternative> moved(int more) {
        List<Schedule.Span> spans = new ArrayList<>(price.asked().schedule().spans());
        Schedule.Span last = spans.remove(spans.size() - 1);
        DateRange dates = last.dates();
        if (dates.days() + more < 1 || price.asked().schedule().days() + more > Schedule.MOST_DAYS) {
            return Optional.empty();
        }
        spans.add(new Schedule.Span(new DateRange(dates.from(), dates.until().plusDays(more)), last.use()));
        Schedule schedule = new Schedule(spans);
        PackagePricing.Laid laid = pricing.on(price.asked().on(schedule));
        Money total = laid.lines().stream().map(PricedLine::total).reduce(Money.zero(price.currency()), Money::plus);
        return laid.whole()
                ? Optional.of(new Alternative(words(schedule, total, more), schedule, total))
                : Optional.empty();
    }

    private String words(Schedule other, Money total, int more) {
        Money difference = price.total().minus(total);
        String days = Math.abs(more) == 1 ? "one day" : Math.abs(more) + " days";
        if (more < 0) {
            return "Bring it back " + days + " earlier and save " + difference + ".";
        }
        return difference.signum() == 0
                ? "Keep it " + days + " longer for nothing."
                : other.days() + " days cost less than these "
                        + price.asked().schedule().days() + ": keep it " + days + " longer and save " + difference
                        + ".";
    }
}
