package dayglass.inventory.life;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.house.House;
import dayglass.inventory.Holding;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a unit cost and earned so far, as far as it is recorded. Nothing is converted: each currency has its own sums.
 *
 * @param cost what was paid, by day
 * @param earned what was had, by day
 * @param promised what rentals that are not settled yet will bring, by day
 */
public record MoneySoFar(List<Line> cost, List<Line> earned, List<Line> promised) {
    private static final Comparator<Line> BY_DAY =
            Comparator.comparing(line -> line.on().orElse(LocalDate.MIN));

    public MoneySoFar {
        promised = List.copyOf(promised);
        cost = List.copyOf(cost);
        earned = List.copyOf(earned);
    }

    /**
     * One amount.
     *
     * @param on empty where the day is not known
     */
    public record Line(Optional<LocalDate> on, String what, Money amount) {}

    /** The price of an owned unit and the work on the bench; what letting brought and the price it was sold for. */
    static MoneySoFar of(UnitRecords records, Lettings lettings, House house) {
        List<Line> cost = new ArrayList<>(bench(records, house));
        records.unit()
                .holding()
                .<Optional<Line>>fold(
                        owned -> owned.price().map(price -> new Line(owned.boughtOn(), "bought", price)),
                        rented -> Optional.empty(),
                        (Holding.Consigned lent) -> Optional.empty())
                .ifPresent(cost::add);
        cost.sort(BY_DAY);
        List<Line> earned = new ArrayList<>(lettings.earned());
        records.unit()
                .departure()
                .flatMap(gone -> gone.price().map(price -> new Line(Optional.of(gone.on()), gone.how(), price)))
                .ifPresent(earned::add);
        earned.sort(BY_DAY);
        return new MoneySoFar(
                cost, earned, lettings.promised().stream().sorted(BY_DAY).toList());
    }

    /** The work on the bench alone. */
    static List<Line> bench(UnitRecords records, House house) {
        List<Line> cost = new ArrayList<>();
        records.occupations().forEach(each -> {
            Occupation visit = each.facts();
            LocalDate on = visit.stay().out().atZone(house.zone()).toLocalDate();
            Optional<Money> paid =
                    visit.cancelled() ? Optional.empty() : visit.bench().flatMap(BenchWork::cost);
            paid.ifPresent(amount -> cost.add(new Line(Optional.of(on), visit.subject(), amount)));
        });
        return cost;
    }

    /** The sum of each currency, by its code. */
    public static List<Money> totals(List<Line> lines) {
        Map<String, Money> sums = new TreeMap<>();
        for (Line line : lines) {
            Currency currency = line.amount().currency();
            sums.merge(currency.code(), line.amount(), Money::plus);
        }
        return List.copyOf(sums.values());
    }
}
