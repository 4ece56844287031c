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
import dayglass.inventory.life.OccupationVersions.Version;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells a unit's life from its records, the newest first. What lies ahead is told too, by when it is to be. */
final class Timeline {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    /** Within an hour is on time; an hour or two of grace are common practice. */
    private static final Duration GRACE = Duration.ofHours(1);

    private final House house;
    private final Map<Occupation.Id, List<Version>> versions;
    private final List<LifeEvent> events = new ArrayList<>();

    private Timeline(UnitRecords records, House house) {
        this.house = house;
        this.versions = records.versions().stream().collect(Collectors.groupingBy(Version::occupation));
    }

    static List<LifeEvent> of(UnitRecords records, Lettings lettings, House house) {
        Timeline timeline = new Timeline(records, house);
        timeline.held(records.unit());
        records.entered()
                .ifPresent(change -> timeline.events.add(new LifeEvent(
                        change.madeAt(), false, "put on the shelf", "", Optional.of(change.by()), Optional.empty())));
        records.sets().forEach(joined -> {
            timeline.add(joined.membership().joinedAt(), "joined a set", joined.set());
            joined.membership().leftAt().ifPresent(left -> timeline.add(left, "left a set", joined.set()));
        });
        records.notes().forEach(timeline::noted);
        records.occupations().forEach(timeline::occupied);
        records.overrides().forEach(timeline::overridden);
        lettings.shares().forEach(timeline::let);
        // What has one moment was entered in its order; turned round as a whole, the later stays above the earlier.
        timeline.events.sort(Comparator.comparing(LifeEvent::at));
        Collections.reverse(timeline.events);
        return List.copyOf(timeline.events);
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
        return "from " + rented.owner() + ", to be given back on " + DAY.format(rented.dueBackOn());
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
                        + (note.seen().quarantine() ? ", quarantine" : "")
                        + (note.seen().words().isEmpty()
                                ? ""
                                : ": " + note.seen().words()) + resolves,
                Optional.of(note.by()),
                Optional.empty()));
    }

    private void occupied(Stored<Occupation.Id, Occupation> stored) {
        Occupation of = stored.facts();
        entered(stored);
        of.handling()
                .wentOut()
                .ifPresent(out -> event(
                        stored,
                        out,
                        "went out",
                        "for " + quoted(of),
                        first(stored.id(), each -> each.handling().wentOut().isPresent())
                                .map(Version::by)));
        of.handling()
                .cameBack()
                .ifPresent(back -> event(
                        stored,
                        back,
                        "came back",
                        "from " + quoted(of) + timeliness(stored.id(), back),
                        first(stored.id(), each -> each.handling().cameBack().isPresent())
                                .map(Version::by)));
        first(stored.id(), Version::cancelled)
                .ifPresent(version -> event(stored, version.at(), "cancelled", quoted(of), Optional.of(version.by())));
        if (of.kind() != Kind.BOOKING && !of.cancelled()) {
            event(
                    stored,
                    of.stay().out(),
                    of.kind() == Kind.BENCH ? "on the bench" : "away",
                    of.subject() + of.bench().map(Timeline::work).orElse(""),
                    Optional.empty());
        }
    }

    private Optional<Version> first(Occupation.Id id, Predicate<Version> is) {
        return versions.getOrDefault(id, List.of()).stream().filter(is).findFirst();
    }

    /** Against when it was due just before it came; its booking was shortened or prolonged to what really was. */
    private String timeliness(Occupation.Id id, Instant back) {
        Optional<Instant> due = versions.getOrDefault(id, List.of()).stream()
                .takeWhile(each -> each.handling().cameBack().isEmpty())
                .reduce((earlier, later) -> later)
                .map(Version::back);
        if (due.isEmpty()) {
            return "";
        }
        Duration over = Duration.between(due.get(), back);
        if (over.abs().compareTo(GRACE) < 0) {
            return ", on time";
        }
        long hours = over.abs().toHours();
        long days = over.abs().toDays();
        String by = days > 0 ? days + (days == 1 ? " day" : " days") : hours + (hours == 1 ? " hour" : " hours");
        return ", " + by + (over.isNegative() ? " early" : " late");
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

    private String local(Instant at) {
        return DAY.format(at.atZone(house.zone()));
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

    private void let(Lettings.Share share) {
        events.add(new LifeEvent(
                share.on().atStartOfDay(house.zone()).toInstant(),
                true,
                "let",
                "on " + share.words() + ": " + share.amount() + (share.settled() ? " earned" : " promised"),
                Optional.empty(),
                Optional.of(share.booking())));
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
