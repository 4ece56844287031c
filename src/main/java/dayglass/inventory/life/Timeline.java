package dayglass.inventory.life;

import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.Person;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.condition.ConditionNote;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells a unit's life from its records, the newest first. What lies ahead is told too, by when it is to be. */
final class Timeline {
    private final House house;
    private final List<LifeEvent> events = new ArrayList<>();

    private Timeline(House house) {
        this.house = house;
    }

    static List<LifeEvent> of(UnitRecords records, House house) {
        Timeline timeline = new Timeline(house);
        timeline.held(records.unit());
        records.sets().forEach(joined -> {
            timeline.add(joined.membership().joinedAt(), "joined a set", joined.set());
            joined.membership().leftAt().ifPresent(left -> timeline.add(left, "left a set", joined.set()));
        });
        records.notes().forEach(timeline::noted);
        records.occupations().forEach(timeline::occupied);
        records.overrides().forEach(timeline::overridden);
        return timeline.events.stream()
                .sorted(Comparator.comparing(LifeEvent::at).reversed())
                .toList();
    }

    private void add(Instant at, String what, String words) {
        events.add(new LifeEvent(at, false, what, words, Optional.empty(), Optional.empty()));
    }

    private void day(LocalDate on, String what, String words) {
        events.add(new LifeEvent(
                on.atStartOfDay(house.zone()).toInstant(), true, what, words, Optional.empty(), Optional.empty()));
    }

    private void held(Unit unit) {
        unit.heldFrom()
                .ifPresent(from -> day(
                        from,
                        unit.holding().fold(owned -> "bought", rented -> "rented in", lent -> "consigned"),
                        unit.holding().fold(Timeline::papers, Timeline::terms, lent -> "by " + lent.owner())));
        unit.departure()
                .ifPresent(gone -> day(
                        gone.on(),
                        gone.how(),
                        gone.price().map(price -> "for " + price).orElse("")));
    }

    private static String papers(Holding.Owned owned) {
        return Stream.of(
                        owned.price().map(price -> "for " + price).orElse(""),
                        owned.order().isEmpty() ? "" : "order " + owned.order(),
                        owned.invoice().isEmpty() ? "" : "invoice " + owned.invoice())
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String terms(Holding.RentedIn rented) {
        return "from " + rented.owner() + ", to be given back on " + rented.dueBackOn();
    }

    private void noted(Stored<ConditionNote.Id, ConditionNote> stored) {
        ConditionNote note = stored.facts();
        String resolves = note.resolves().isEmpty()
                ? ""
                : "; resolves note "
                        + note.resolves().stream()
                                .map(id -> String.valueOf(id.number()))
                                .collect(Collectors.joining(", "));
        events.add(new LifeEvent(
                note.notedAt(),
                false,
                "noted",
                note.seen().finding() + ", " + note.seen().part().word() + ", severity "
                        + note.seen().severity().grade()
                        + (note.seen().quarantine() ? ", quarantine" : "") + resolves,
                Optional.of(note.by()),
                Optional.empty()));
    }

    private void occupied(Stored<Occupation.Id, Occupation> stored) {
        Occupation of = stored.facts();
        entered(stored);
        of.handling().wentOut().ifPresent(out -> event(stored, out, "went out", "for " + quoted(of), Optional.empty()));
        of.handling()
                .cameBack()
                .ifPresent(back -> event(stored, back, "came back", "from " + quoted(of), Optional.empty()));
        if (of.kind() != Kind.BOOKING && !of.cancelled()) {
            event(
                    stored,
                    of.stay().out(),
                    of.kind() == Kind.BENCH ? "on the bench" : "away",
                    of.subject() + of.bench().map(Timeline::work).orElse(""),
                    Optional.empty());
        }
    }

    private void entered(Stored<Occupation.Id, Occupation> stored) {
        Occupation of = stored.facts();
        String what = switch (of.kind()) {
            case BOOKING -> "booked";
            case BENCH -> "bench visit entered";
            case ABSENCE -> "absence entered";
        };
        event(
                stored,
                of.record().at(),
                what,
                quoted(of) + ", " + local(of.stay().out()) + " to "
                        + local(of.stay().back()) + (of.cancelled() ? "; cancelled since" : ""),
                Optional.of(of.record().by()));
    }

    private void event(
            Stored<Occupation.Id, Occupation> stored, Instant at, String what, String words, Optional<Person.Id> by) {
        events.add(new LifeEvent(at, false, what, words, by, Optional.of(stored.id())));
    }

    private LocalDate local(Instant at) {
        return at.atZone(house.zone()).toLocalDate();
    }

    private static String quoted(Occupation of) {
        return "\"" + of.subject() + "\"";
    }

    private static String work(BenchWork bench) {
        String said = Stream.of(bench.findings(), bench.work(), bench.parts())
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining("; "));
        return (said.isEmpty() ? "" : ": " + said)
                + bench.cost().map(cost -> "; cost " + cost).orElse("")
                + (bench.done() ? "" : " (not finished)");
    }

    private void overridden(HandOver.KeptOverride override) {
        events.add(new LifeEvent(
                override.at(),
                false,
                "let out all the same",
                override.obstacles() + " Reason: " + override.reason(),
                Optional.of(override.by()),
                Optional.of(override.occupation())));
    }
}
