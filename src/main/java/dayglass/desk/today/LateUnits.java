package dayglass.desk.today;

import dayglass.base.Stored;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.LateDays;
import dayglass.desk.rental.LetOut;
import dayglass.desk.rental.Rental;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What should be back by now and is not. */
final class LateUnits {
    private final Gathered day;
    private final LetOut letOut;

    LateUnits(Gathered day, LetOut letOut) {
        this.day = day;
        this.letOut = letOut;
    }

    private record Together(Instant due, Today.Whose whose) {}

    List<Today.Late> all() {
        Map<Together, List<Stored<Occupation.Id, Occupation>>> groups = new LinkedHashMap<>();
        day.bookings.values().stream()
                .filter(booking -> booking.facts().handling().isOut())
                .filter(booking -> booking.facts().stay().back().isBefore(day.now))
                .sorted(Comparator.comparing(booking -> booking.facts().stay().back()))
                .forEach(booking -> groups.computeIfAbsent(
                                new Together(booking.facts().stay().back(), day.whose(booking)),
                                key -> new ArrayList<>())
                        .add(booking));
        Set<Rental.Id> charged = new HashSet<>();
        List<Today.Late> late = new ArrayList<>();
        groups.forEach((key, of) -> late.add(new Today.Late(
                key.due(),
                LateDays.begun(key.due(), day.now, day.house.zone()),
                key.whose(),
                of.stream().map(day::piece).sorted(Passages.BY_TAG).toList(),
                day.rental(of.get(0).id())
                        .filter(rental -> charged.add(rental.id()))
                        .map(this::costs)
                        .orElse(List.of()))));
        return late;
    }

    private List<Charge> costs(Stored<Rental.Id, Rental> rental) {
        return letOut.lateSoFar(letOut.now(rental));
    }
}
