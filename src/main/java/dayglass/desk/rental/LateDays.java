package dayglass.desk.rental;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.desk.KeptRules;
import dayglass.desk.price.PricedLine;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.house.WhoActs;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Charges what comes back late: each day begun after the moment at which it was due, at the line's price of a day. A set
 * is charged once, for its latest unit.
 */
public final class LateDays {
    private final Rentals rentals;
    private final KeptRules rules;
    private final HouseSettings settings;
    private final WhoActs whoActs;

    public LateDays(Rentals rentals, KeptRules rules, HouseSettings settings, WhoActs whoActs) {
        this.rentals = rentals;
        this.rules = rules;
        this.settings = settings;
        this.whoActs = whoActs;
    }

    /** Days begun between two moments, as the clocks of the zone show them; none where the first is not before. */
    public static int begun(Instant due, Instant at, ZoneId zone) {
        if (!due.isBefore(at)) {
            return 0;
        }
        LocalDateTime dueLocal = due.atZone(zone).toLocalDateTime();
        LocalDateTime atLocal = at.atZone(zone).toLocalDateTime();
        long whole = ChronoUnit.DAYS.between(dueLocal, atLocal);
        boolean more = dueLocal.plusDays(whole).isBefore(atLocal);
        return Math.toIntExact(whole) + (more ? 1 : 0);
    }

    /** What is to be charged where these units of a rental come back at a moment. */
    List<Charge> of(RentalNow before, List<Unit.Id> units, Instant at) {
        House house = settings.now().facts();
        TreeMap<Integer, Integer> daysByLine = new TreeMap<>();
        for (Rental.Placed placed : before.facts().standing()) {
            if (units.contains(placed.unit()) && before.isOut(placed)) {
                Instant due = before.booking(placed).facts().stay().back();
                daysByLine.merge(placed.line(), begun(due, at, house.zone()), Math::max);
            }
        }
        List<Charge> charges = new ArrayList<>();
        daysByLine.forEach((line, days) -> {
            int more = days - charged(before.facts(), line);
            if (more > 0) {
                charges.add(charge(before.facts(), line, more, at));
            }
        });
        return charges;
    }

    Outcome<Stored<Rental.Id, Rental>> charged(
            Stored<Rental.Id, Rental> back, RentalNow before, List<Unit.Id> units, Instant at) {
        List<Charge> charges = of(before, units, at);
        return charges.isEmpty()
                ? Outcome.done(back)
                : rentals.change(
                        new Stored<>(back.id(), back.version(), back.facts().charging(charges)));
    }

    private static int charged(Rental rental, int line) {
        return rental.charges().stream()
                .filter(charge -> charge.kind() == Charge.Kind.LATE)
                .filter(charge -> charge.line().equals(Optional.of(line)))
                .mapToInt(Charge::days)
                .sum();
    }

    private Charge charge(Rental rental, int line, int days, Instant at) {
        PricedLine priced = rental.promise().price().lines().get(line);
        Money net = priced.lateDay().times(days);
        return new Charge(
                Charge.Kind.LATE,
                Optional.empty(),
                Optional.of(line),
                days,
                priced.what() + ", " + (days == 1 ? "one day late" : days + " days late") + " at "
                        + priced.lateDay().amount(),
                net,
                rules.now().facts().taxes().stream()
                        .map(tax -> new Charge.Tax(tax.code(), tax.percent().of(net)))
                        .toList(),
                Optional.empty(),
                whoActs.now(),
                at);
    }
}
