package dayglass.house;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;

/**
 * What a date and time on the house's clock means as a moment. On the days on which clocks change, an hour occurs twice
 * and another does not exist at all.
 */
public sealed interface LocalMoment {
    /** It is one moment. */
    record Once(Instant moment) implements LocalMoment {}

    /** It occurs twice, with two offsets from UTC, the earlier moment first. */
    record Twice(OffsetDateTime first, OffsetDateTime second) implements LocalMoment {}

    /** Clocks jump over it, to {@code resumes}. */
    record Never(LocalDateTime resumes) implements LocalMoment {}

    static LocalMoment of(LocalDateTime local, ZoneId zone) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.size() == 1) {
            return new Once(local.toInstant(offsets.get(0)));
        }
        return offsets.isEmpty()
                ? new Never(zone.getRules().getTransition(local).getDateTimeAfter())
                : new Twice(local.atOffset(offsets.get(0)), local.atOffset(offsets.get(1)));
    }

    default <R> R fold(Function<Instant, R> once, Function<Twice, R> twice, Function<Never, R> never) {
        if (this instanceof Once it) {
            return once.apply(it.moment());
        }
        return this instanceof Twice it ? twice.apply(it) : never.apply((Never) this);
    }
}
