package dayglass.inventory;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Units that go out together.
 *
 * @param matched chosen to look alike, so that one alone does not replace another
 * @param members in their order; a unit is in one set at most
 * @param ownCovers how many of each slot the whole set serves, where that is not the sum of its members; empty for the
 *     sum
 */
public record LensSet(String name, boolean matched, List<Unit.Id> members, Map<String, Integer> ownCovers) {
    public LensSet {
        members = List.copyOf(members);
        ownCovers = Map.copyOf(ownCovers);
    }

    /** The number of a set. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * A unit's time in a set.
     *
     * @param leftAt empty while it is in
     */
    public record Membership(Unit.Id unit, Instant joinedAt, Optional<Instant> leftAt) {}

    /** How many of each slot the whole set serves. */
    public Map<String, Integer> covers(List<Unit> units) {
        if (!ownCovers.isEmpty()) {
            return ownCovers;
        }
        Map<String, Integer> sum = new HashMap<>();
        units.forEach(unit -> unit.use().covers().forEach((slot, count) -> sum.merge(slot, count, Integer::sum)));
        return sum;
    }
}
