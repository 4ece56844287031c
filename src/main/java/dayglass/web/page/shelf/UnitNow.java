package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.condition.Condition;
import dayglass.inventory.condition.Health;
import dayglass.inventory.life.UnitRecords;
import dayglass.web.page.picture.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where a unit is and whether it can go out, in words. */
final class UnitNow {
    private final UnitRecords records;
    private final Instant now;
    private final ZoneId zone;

    UnitNow(UnitRecords records, Instant now, ZoneId zone) {
        this.records = records;
        this.now = now;
        this.zone = zone;
    }

    /** What is entered and not over, by time. */
    List<Stored<Occupation.Id, Occupation>> ahead() {
        return records.occupations().stream()
                .filter(each -> !each.facts().cancelled()
                        && each.facts().handling().cameBack().isEmpty())
                .filter(each -> each.facts().handling().isOut()
                        || each.facts().stay().back().isAfter(now))
                .sorted(Comparator.comparing(each -> each.facts().stay().out()))
                .toList();
    }

    String words() {
        return records.unit()
                .departure()
                .filter(gone -> !gone.on().isAfter(now.atZone(zone).toLocalDate()))
                .map(UnitNow::left)
                .or(this::elsewhere)
                .or(this::keptIn)
                .or(this::turnaround)
                .orElseGet(this::free);
    }

    private static String left(Unit.Departure gone) {
        return capital(gone.how()) + " on " + Words.day(gone.on());
    }

    private Optional<String> elsewhere() {
        return ahead().stream()
                .map(Stored::facts)
                .filter(each -> each.handling().isOut() || !each.stay().out().isAfter(now))
                .findFirst()
                .map(this::where);
    }

    private String where(Occupation of) {
        String until = Words.moment(of.stay().back(), zone);
        if (of.kind() == Kind.BENCH) {
            return "On the bench until " + until + ": " + of.subject();
        }
        if (of.kind() == Kind.ABSENCE) {
            return "Away until " + until + ": " + of.subject();
        }
        if (!of.handling().isOut()) {
            return "Booked for \"" + of.subject() + "\" since "
                    + Words.moment(of.stay().out(), zone) + ", not handed over yet";
        }
        return of.stay().back().isBefore(now)
                ? "Late: out for \"" + of.subject() + "\", was due back " + until
                : "Out for \"" + of.subject() + "\", due back " + until;
    }

    private Optional<String> keptIn() {
        Condition condition = Condition.now(records.notes());
        if (condition.health() != Health.NOT_HEALTHY) {
            return Optional.empty();
        }
        return Optional.of(
                condition.quarantined()
                        ? "Quarantined: it stays in until a note resolves it"
                        : "Not healthy: it is not to be promised");
    }

    private Optional<String> turnaround() {
        return records.occupations().stream()
                .map(Stored::facts)
                .filter(each -> !each.cancelled()
                        && !each.stay().back().isAfter(now)
                        && each.stay().freeAt().isAfter(now))
                .findFirst()
                .map(each -> "Back, free again from " + Words.moment(each.stay().freeAt(), zone));
    }

    private String free() {
        return ahead().stream()
                .map(Stored::facts)
                .findFirst()
                .map(next -> "Free until " + Words.moment(next.stay().out(), zone) + ", then " + then(next))
                .orElse("Free");
    }

    private static String then(Occupation next) {
        return switch (next.kind()) {
            case BOOKING -> "booked for \"" + next.subject() + "\"";
            case BENCH -> "on the bench: " + next.subject();
            case ABSENCE -> "away: " + next.subject();
        };
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
