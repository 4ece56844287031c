package dayglass.desk.price;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is worth saying aloud of a price: more days for nothing or for less, a day less that saves much. Each is found by
 * pricing the very package that it proposes.
 */
public final class Alternatives {
    private static final int MOST_MORE_DAYS = 7;

    private final PricePackage pricing;

    public Alternatives(PricePackage pricing) {
        this.pricing = pricing;
    }

    /**
     * One of them.
     *
     * @param schedule the days of use that it proposes
     * @param total what it comes to
     */
    public record Alternative(String words, Schedule schedule, Money total) {}

    /** Those of a price, the best for the customer first; none where something is missing. */
    public List<Alternative> of(PackagePrice price) {
        if (!price.whole() || price.lines().isEmpty()) {
            return List.of();
        }
        List<Alternative> found = new ArrayList<>();
        longer(price).ifPresent(found::add);
        shorter(price).ifPresent(found::add);
        return found;
    }

    private Optional<Alternative> longer(PackagePrice price) {
        Optional<Alternative> best = Optional.empty();
        Money least = price.total();
        for (int more = 1; more <= MOST_MORE_DAYS; more++) {
            Optional<PackagePrice> other = priced(price, more);
            if (other.isPresent() && other.get().total().compareTo(least) <= 0) {
                least = other.get().total();
                best = Optional.of(alternative(price, other.get(), more));
            }
        }
        return best;
    }

    private Optional<Alternative> shorter(PackagePrice price) {
        return priced(price, -1)
                .filter(other -> other.total().compareTo(price.total()) < 0)
                .map(other -> alternative(price, other, -1));
    }

    /** The package with its last span so many days longer; empty where that cannot be had whole. */
    private Optional<PackagePrice> priced(PackagePrice price, int more) {
        List<Schedule.Span> spans = new ArrayList<>(price.asked().schedule().spans());
        Schedule.Span last = spans.remove(spans.size() - 1);
        DateRange dates = last.dates();
        if (dates.days() + more < 1 || price.asked().schedule().days() + more > Schedule.MOST_DAYS) {
            return Optional.empty();
        }
        spans.add(new Schedule.Span(new DateRange(dates.from(), dates.until().plusDays(more)), last.use()));
        return pricing.price(price.asked().on(new Schedule(spans)))
                .<Optional<PackagePrice>>fold(Optional::of, problem -> Optional.empty())
                .filter(PackagePrice::whole);
    }

    private static Alternative alternative(PackagePrice price, PackagePrice other, int more) {
        Money difference = price.total().minus(other.total());
        String days = Math.abs(more) == 1 ? "one day" : Math.abs(more) + " days";
        String words;
        if (more < 0) {
            words = "Bring it back " + days + " earlier and save " + difference + ".";
        } else if (difference.signum() == 0) {
            words = "Keep it " + days + " longer for nothing.";
        } else {
            words = other.asked().schedule().days() + " days cost less than these "
                    + price.asked().schedule().days() + ": keep it " + days + " longer and save " + difference + ".";
        }
        return new Alternative(words, other.asked().schedule(), other.total());
    }
}
