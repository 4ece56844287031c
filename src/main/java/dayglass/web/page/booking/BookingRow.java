package dayglass.web.page.booking;

import dayglass.base.Stored;
import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Occupation;
import java.time.Instant;
import java.util.Locale;
import java.util.stream.Stream;

/** A booking, a bench visit, an absence or a hold in the list of what is ahead and out. */
public record BookingRow(
        Instant begins,
        String address,
        String kind,
        String subject,
        long unit,
        String tag,
        String model,
        String out,
        String back,
        String state) {

    /** The unit that it is about. */
    record Of(long id, String tag, String model) {}

    static BookingRow of(Stored<Occupation.Id, Occupation> stored, Of unit, Wording words) {
        Occupation of = stored.facts();
        return new BookingRow(
                of.stay().out(),
                "/bookings/" + stored.id().number(),
                Wording.kind(of.kind()),
                of.subject(),
                unit.id(),
                unit.tag(),
                unit.model(),
                words.moment(of.stay().out()),
                words.moment(of.stay().back()),
                words.state(of));
    }

    static BookingRow ofHold(Stored<Hold.Id, Hold> stored, Of unit, Wording words) {
        Hold hold = stored.facts();
        return new BookingRow(
                hold.out(),
                "/holds/" + stored.id().number(),
                "hold",
                hold.subject(),
                unit.id(),
                unit.tag(),
                unit.model(),
                words.moment(hold.out()),
                words.moment(hold.back()),
                "hold " + hold.rank() + ", lapses " + words.moment(hold.expires()));
    }

    /** Whether each word stands somewhere in the row, in capitals or not. */
    boolean has(String words) {
        String all = String.join("\n", kind, subject, tag, model, state).toLowerCase(Locale.ROOT);
        return Stream.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+", -1))
                .allMatch(all::contains);
    }
}
