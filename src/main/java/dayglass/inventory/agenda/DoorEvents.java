package dayglass.inventory.agenda;

import dayglass.base.Stored;
import dayglass.calendar.Event;
import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What goes out and comes back, as events. Bookings of one group are one event for each day on which they go and one for
 * each on which they come, at the first of their hours; others are told together where they pass at one moment for one
 * subject.
 */
final class DoorEvents {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final String OUT = "Out";
    private static final String BACK = "Back";

    private final Map<Unit.Id, String> tags;
    private final House house;
    private final Map<Occupation.Id, BookingGroups.Group> groups;

    DoorEvents(Map<Unit.Id, String> tags, House house, Map<Occupation.Id, BookingGroups.Group> groups) {
        this.tags = tags;
        this.house = house;
        this.groups = groups;
    }

    private record Passing(String way, Instant at, String tag, Occupation.Id booking, String subject) {}

    List<Event> of(List<Stored<Occupation.Id, Occupation>> near) {
        Map<String, List<Passing>> together = new TreeMap<>();
        for (Stored<Occupation.Id, Occupation> each : near) {
            Occupation booking = each.facts();
            if (booking.kind() == Occupation.Kind.BOOKING) {
                String tag = tags.getOrDefault(booking.unit(), "");
                Instant out = booking.stay().out();
                Instant back = booking.stay().back();
                for (Passing passing : List.of(
                        new Passing(OUT, out, tag, each.id(), booking.subject()),
                        new Passing(BACK, back, tag, each.id(), booking.subject()))) {
                    together.computeIfAbsent(key(passing), key -> new ArrayList<>())
                            .add(passing);
                }
            }
        }
        List<Event> events = new ArrayList<>();
        together.forEach((key, passing) -> events.add(event(key, passing)));
        return events;
    }

    private Optional<BookingGroups.Group> group(Passing of) {
        return Optional.ofNullable(groups.get(of.booking()));
    }

    private String key(Passing of) {
        return group(of)
                .map(group -> of.way() + " for " + group.key() + " "
                        + of.at().atZone(house.zone()).toLocalDate())
                .orElse(of.way() + " for \"" + of.subject() + "\" " + of.at());
    }

    private Event event(String key, List<Passing> passing) {
        List<Passing> sorted = passing.stream()
                .sorted(Comparator.comparing(Passing::at).thenComparing(Passing::tag))
                .toList();
        Passing first = sorted.get(0);
        String units = sorted.size() == 1 ? first.tag() : sorted.size() + " units";
        List<String> lines = new ArrayList<>();
        group(first)
                .map(BookingGroups.Group::about)
                .filter(about -> !about.isEmpty())
                .ifPresent(lines::add);
        boolean oneHour = sorted.stream().allMatch(each -> each.at().equals(first.at()));
        sorted.forEach(each ->
                lines.add(oneHour ? each.tag() : HOUR.format(each.at().atZone(house.zone())) + " " + each.tag()));
        return new Event(
                Agenda.uid(house, key),
                new Event.When.Moment(first.at()),
                first.way()
                        + group(first)
                                .map(group -> ": " + group.title() + ", " + (sorted.size() == 1 ? "1 unit" : units))
                                .orElse(" for \"" + first.subject() + "\": " + units),
                String.join("\n", lines));
    }
}
