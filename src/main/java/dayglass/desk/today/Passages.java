package dayglass.desk.today;

import dayglass.base.Stored;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Handling;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What passes the door on a day, told together where it passes within one minute for one customer. */
final class Passages {
    static final Comparator<Today.Piece> BY_TAG = Comparator.comparing(Today.Piece::tag);

    private final Gathered day;

    Passages(Gathered day) {
        this.day = day;
    }

    /** One end of one booking. */
    private record End(Instant at, boolean done, Stored<Occupation.Id, Occupation> booking) {}

    private record Together(Instant minute, boolean done, Today.Whose whose) {}

    List<Today.Passage> out() {
        return together(this::goingOut);
    }

    List<Today.Passage> back() {
        return together(this::comingBack);
    }

    private Optional<End> goingOut(Stored<Occupation.Id, Occupation> booking) {
        Occupation of = booking.facts();
        Optional<Instant> went = of.handling().wentOut();
        if (went.isPresent()) {
            return went.filter(day::during).map(at -> new End(at, true, booking));
        }
        Instant due = of.stay().out();
        boolean waiting = day.during(day.now)
                && due.isBefore(day.from)
                && of.stay().back().isAfter(day.now);
        return day.during(due) || waiting ? Optional.of(new End(due, false, booking)) : Optional.empty();
    }

    /** What was never fetched and whose time is over comes back no more. */
    private Optional<End> comingBack(Stored<Occupation.Id, Occupation> booking) {
        Handling handling = booking.facts().handling();
        if (handling.cameBack().isPresent()) {
            return handling.cameBack().filter(day::during).map(at -> new End(at, true, booking));
        }
        Instant due = booking.facts().stay().back();
        boolean comes = handling.isOut() || due.isAfter(day.now);
        return comes && day.during(due) ? Optional.of(new End(due, false, booking)) : Optional.empty();
    }

    private List<Today.Passage> together(Function<Stored<Occupation.Id, Occupation>, Optional<End>> end) {
        Map<Together, List<End>> groups = new LinkedHashMap<>();
        day.bookings.values().stream()
                .flatMap(booking -> end.apply(booking).stream())
                .sorted(Comparator.comparing(End::at))
                .forEach(each -> groups.computeIfAbsent(
                                new Together(
                                        each.at().truncatedTo(ChronoUnit.MINUTES),
                                        each.done(),
                                        day.whose(each.booking())),
                                key -> new ArrayList<>())
                        .add(each));
        List<Today.Passage> passages = new ArrayList<>();
        groups.forEach((key, ends) -> passages.add(new Today.Passage(
                ends.get(0).at(),
                key.done(),
                key.whose(),
                ends.stream()
                        .map(each -> day.piece(each.booking()))
                        .sorted(BY_TAG)
                        .toList())));
        passages.sort(Comparator.comparing(Today.Passage::at)
                .thenComparing(passage -> passage.whose().words()));
        return passages;
    }
}
