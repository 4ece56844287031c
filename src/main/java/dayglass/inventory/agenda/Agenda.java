package dayglass.inventory.agenda;

import dayglass.base.DateRange;
import dayglass.base.Stored;
import dayglass.calendar.Event;
import dayglass.house.House;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Whereabouts;
import dayglass.inventory.service.DueList;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What the house has to do, as a list of what must be given back and as a calendar of everything. */
public final class Agenda {
    private static final int ALL = Integer.MAX_VALUE;
    private static final Duration TOLD_BACK = Duration.ofDays(28);
    private static final Duration TOLD_AHEAD = Duration.ofDays(182);

    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final DueList dueList;
    private final BookingGroups groups;

    public Agenda(Shelf shelf, Whereabouts whereabouts, DueList dueList, BookingGroups groups) {
        this.groups = groups;
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.dueList = dueList;
    }

    /** Every rented-in unit that is still here, the first due first. */
    public List<GiveBack> toGiveBack() {
        House house = whereabouts.settings().now().facts();
        Instant now = whereabouts.clock().instant();
        List<Stored<Unit.Id, Unit>> rented = shelf.units().list(Optional.empty(), ALL).stream()
                .filter(unit -> unit.facts()
                        .holding()
                        .fold(owned -> false, each -> unit.facts().departure().isEmpty(), lent -> false))
                .toList();
        Map<Unit.Id, List<Stored<Occupation.Id, Occupation>>> ahead = new HashMap<>();
        whereabouts
                .occupations()
                .ahead(rented.stream().map(Stored::id).toList(), now)
                .forEach(each -> ahead.computeIfAbsent(each.facts().unit(), unit -> new ArrayList<>())
                        .add(each));
        LocalDate today = now.atZone(house.zone()).toLocalDate();
        return rented.stream()
                .flatMap(unit -> GiveBack.of(unit, ahead.getOrDefault(unit.id(), List.of()), house, today).stream())
                .sorted(GiveBack.FIRST_DUE)
                .toList();
    }

    /** What was in the last four weeks and will be in the next half year. */
    public List<Event> events() {
        House house = whereabouts.settings().now().facts();
        Instant now = whereabouts.clock().instant();
        Map<Unit.Id, String> tags = new HashMap<>();
        shelf.units()
                .list(Optional.empty(), ALL)
                .forEach(unit -> tags.put(unit.id(), unit.facts().tag()));
        List<Stored<Occupation.Id, Occupation>> near =
                whereabouts.occupations().between(now.minus(TOLD_BACK), now.plus(TOLD_AHEAD));
        List<Event> events = new ArrayList<>(new DoorEvents(tags, house, groups.since(now.minus(TOLD_BACK))).of(near));
        near.stream()
                .filter(each -> each.facts().kind() != Kind.BOOKING)
                .forEach(each -> events.add(away(each, tags, house)));
        for (DueList.Row row : dueList.rows(now)) {
            row.due()
                    .dueOn()
                    .ifPresent(day -> events.add(onDay(
                            house,
                            "service " + row.plan().id().number(),
                            day,
                            "Service due: " + row.unit().tag())));
        }
        for (GiveBack each : toGiveBack()) {
            events.add(onDay(
                    house,
                    "give back " + each.unit().number() + " " + each.rented().agreement(),
                    each.rented().dueBackOn(),
                    "Give back " + each.tag() + " to " + each.rented().owner()));
        }
        return events;
    }

    private static Event away(Stored<Occupation.Id, Occupation> stored, Map<Unit.Id, String> tags, House house) {
        Occupation of = stored.facts();
        String tag = tags.getOrDefault(of.unit(), "");
        ZoneId zone = house.zone();
        LocalDate last = of.stay().back().minusSeconds(1).atZone(zone).toLocalDate();
        return new Event(
                uid(house, of.kind().word() + " " + stored.id().number()),
                new Event.When.Days(
                        DateRange.inclusive(of.stay().out().atZone(zone).toLocalDate(), last)),
                tag + (of.kind() == Kind.BENCH ? " on the bench: " : " away: ") + of.subject(),
                "");
    }

    private static Event onDay(House house, String key, LocalDate day, String summary) {
        return new Event(uid(house, key), new Event.When.Days(DateRange.inclusive(day, day)), summary, "");
    }

    static String uid(House house, String key) {
        return UUID.nameUUIDFromBytes((house.name() + "\n" + key).getBytes(StandardCharsets.UTF_8))
                .toString();
    }
}
