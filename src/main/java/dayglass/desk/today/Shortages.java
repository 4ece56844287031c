package dayglass.desk.today;

import dayglass.base.DateRange;
import dayglass.base.Stored;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.price.PackagePrice.Missing;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.SupplierOrder;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Whereabouts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What has still to be got, and which booked units cannot go, of all that goes out from the day to an end. */
final class Shortages {
    private final Gathered day;
    private final Whereabouts whereabouts;
    private final Instant end;
    private final List<Stored<Occupation.Id, Occupation>> going;
    private final Hindrances hindrances;
    private final Map<Today.Whose, Found> found = new LinkedHashMap<>();

    Shortages(Gathered day, Whereabouts whereabouts, Instant end) {
        this.day = day;
        this.whereabouts = whereabouts;
        this.end = end;
        this.going = day.bookings.values().stream().filter(this::goesOut).toList();
        this.hindrances = new Hindrances(
                day,
                whereabouts.door(),
                going.stream().map(booking -> booking.facts().unit()).collect(Collectors.toSet()));
    }

    /** What was found of one customer. */
    private static final class Found {
        private Instant at = Instant.MAX;
        private final List<Today.ToGet> toGet = new ArrayList<>();
        private final List<Missing> missing = new ArrayList<>();
        private final List<Today.Hindered> hindered = new ArrayList<>();

        void first(Instant moment) {
            at = moment.isBefore(at) ? moment : at;
        }
    }

    List<Today.Shortage> all() {
        for (Stored<Rental.Id, Rental> rental : day.rentals) {
            if (rental.facts().ending().isEmpty()) {
                promised(rental);
                cancelled(rental);
            }
        }
        going.forEach(this::hindered);
        List<Today.Shortage> shorts = new ArrayList<>();
        found.forEach((whose, of) -> shorts.add(new Today.Shortage(
                of.at,
                whose,
                of.toGet,
                of.missing,
                of.hindered.stream()
                        .sorted(Comparator.comparing(Today.Hindered::piece, Passages.BY_TAG))
                        .toList())));
        shorts.sort(Comparator.comparing(Today.Shortage::at)
                .thenComparing(each -> each.whose().words()));
        return shorts;
    }

    private Found of(Today.Whose whose) {
        return found.computeIfAbsent(whose, key -> new Found());
    }

    private Today.Whose whose(Stored<Rental.Id, Rental> rental) {
        return new Today.Whose(
                Optional.of(Gathered.named(rental)),
                "Rental " + rental.facts().number() + ", "
                        + rental.facts().customer().name());
    }

    private void promised(Stored<Rental.Id, Rental> rental) {
        PackagePrice price = rental.facts().promise().price();
        for (int at = 0; at < price.lines().size(); at++) {
            toGet(rental, price.lines().get(at), rental.facts().orderOf(at));
        }
        for (Missing each : price.shorts()) {
            Instant at = out(each.dates());
            if (!each.rentedIn() && near(at)) {
                Found of = of(whose(rental));
                of.first(at);
                of.missing.add(each);
            }
        }
    }

    private void toGet(Stored<Rental.Id, Rental> rental, PricedLine line, Optional<SupplierOrder> order) {
        Instant at = out(line.dates());
        boolean inHouse = order.flatMap(SupplierOrder::got).isPresent();
        if (line.rentedIn().isPresent() && !inHouse && near(at)) {
            Found of = of(whose(rental));
            of.first(at);
            of.toGet.add(new Today.ToGet(line, order));
        }
    }

    /** A cancelled booking is near no day any more; when it was to go out the promise says. */
    private void cancelled(Stored<Rental.Id, Rental> rental) {
        List<PricedLine> lines = rental.facts().promise().price().lines();
        for (Rental.Placed placed : rental.facts().standing()) {
            boolean waits = placed.out().isEmpty() && !day.bookings.containsKey(placed.booking());
            if (waits && near(out(lines.get(placed.line()).dates()))) {
                whereabouts
                        .occupations()
                        .find(placed.booking())
                        .filter(booking -> booking.facts().cancelled())
                        .ifPresent(booking -> {
                            Found of = of(whose(rental));
                            of.first(booking.facts().stay().out());
                            of.hindered.add(
                                    new Today.Hindered(day.piece(booking), List.of("Its booking was cancelled.")));
                        });
            }
        }
    }

    private Instant out(DateRange dates) {
        return FreeDays.use(dates.from(), dates.lastDay(), day.house).out();
    }

    private boolean near(Instant at) {
        return !at.isBefore(day.from) && at.isBefore(end);
    }

    private boolean goesOut(Stored<Occupation.Id, Occupation> booking) {
        boolean over = booking.facts().stay().back().isBefore(day.now);
        return booking.facts().handling().wentOut().isEmpty()
                && !over
                && booking.facts().stay().out().isBefore(end);
    }

    private void hindered(Stored<Occupation.Id, Occupation> booking) {
        List<String> why = hindrances.of(booking.facts());
        if (!why.isEmpty()) {
            Found of = of(day.rental(booking.id()).map(this::whose).orElseGet(() -> day.whose(booking)));
            of.first(booking.facts().stay().out());
            of.hindered.add(new Today.Hindered(day.piece(booking), why));
        }
    }
}
