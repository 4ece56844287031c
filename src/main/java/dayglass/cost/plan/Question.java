package dayglass.cost.plan;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A fully resolved costing question: what is needed on which days, and every way to get it. All amounts are of one
 * currency; ids are unique among rentals, purchases and owned together.
 *
 * @param discountRate a year, for the present value of what a purchase costs and brings later
 * @param cashLimit the most that the outlays of all purchases may come to, or empty
 * @param stock how many there are of each physical thing that rentals draw on, by its name
 */
public record Question(
        String job,
        Currency currency,
        Percent discountRate,
        Optional<Money> cashLimit,
        Schedule schedule,
        List<Need> needs,
        List<Rental> rentals,
        List<Purchase> purchases,
        List<Owned> owned,
        Map<String, Integer> stock) {

    public Question {
        needs = List.copyOf(needs);
        rentals = List.copyOf(rentals);
        purchases = List.copyOf(purchases);
        owned = List.copyOf(owned);
        stock = Map.copyOf(stock);
    }

    /**
     * So many of a slot, on the scheduled days of some uses or on dates; needs of one slot add up.
     *
     * @param on empty where {@code dates} says when
     * @param dates inside the horizon; empty where {@code on} says when
     */
    public record Need(String slot, int count, Set<DayUse> on, List<DateRange> dates) {
        public Need {
            on = Set.copyOf(on);
            dates = List.copyOf(dates);
        }
    }

    /**
     * Something that can be rented.
     *
     * @param covers how many of each slot one copy serves
     * @param copies how many can be held on one day
     * @param available the windows, each of which a rental period must lie inside of; empty for always
     * @param draws how many of each thing in {@link Question#stock} one held copy takes
     */
    public record Rental(
            String id,
            String supplier,
            Map<String, Integer> covers,
            int copies,
            RentalTerms terms,
            List<DateRange> available,
            Map<String, Integer> draws) {
        public Rental {
            covers = Map.copyOf(covers);
            available = List.copyOf(available);
            draws = Map.copyOf(draws);
        }
    }

    /** Something that can be bought up to {@code copies} times and serves from {@code availableFrom} on. */
    public record Purchase(
            String id,
            String supplier,
            Map<String, Integer> covers,
            int copies,
            PurchaseTerms terms,
            LocalDate availableFrom) {
        public Purchase {
            covers = Map.copyOf(covers);
        }
    }

    /** Something that is there already and costs nothing; {@code available} empty means always. */
    public record Owned(String id, Map<String, Integer> covers, List<DateRange> available) {
        public Owned {
            covers = Map.copyOf(covers);
            available = List.copyOf(available);
        }
    }
}
