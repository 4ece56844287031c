package dayglass.inventory.booking;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.inventory.Unit;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Every booking, bench visit and absence. Those of one unit that are not cancelled never overlap, whoever writes: the
 * database itself refuses it. None is ever removed.
 */
public interface Occupations {
    /** Refused as taken where the unit is in another place then. */
    Outcome<Stored<Occupation.Id, Occupation>> add(Occupation occupation);

    Optional<Stored<Occupation.Id, Occupation>> find(Occupation.Id id);

    /** By id, in order. */
    List<Stored<Occupation.Id, Occupation>> list(Which which, Optional<Occupation.Id> after, int most);

    /** Refused as stale where another change came first, and as taken. */
    Outcome<Stored<Occupation.Id, Occupation>> change(Stored<Occupation.Id, Occupation> change);

    /** What occupies the unit during a part of the stay, apart from {@code except}; the last to begin. */
    Optional<Stored<Occupation.Id, Occupation>> inTheWay(Unit.Id unit, Stay stay, Optional<Occupation.Id> except);

    /** What occupies the units from a moment on, by unit and by time. */
    List<Stored<Occupation.Id, Occupation>> ahead(List<Unit.Id> units, Instant from);

    /** What occupies any unit at some moment between the two, or went out before the second and is not back. */
    List<Stored<Occupation.Id, Occupation>> between(Instant from, Instant until);

    /** The last return of each unit that is in, where nothing was noted of it and no visit to the bench finished since. */
    List<Stored<Occupation.Id, Occupation>> notSeenSince();

    /**
     * Which occupations.
     *
     * @param unit of this unit only
     * @param from that end after this
     * @param until that begin before this
     */
    record Which(
            Optional<Occupation.Kind> kind, Optional<Unit.Id> unit, Optional<Instant> from, Optional<Instant> until) {}
}
