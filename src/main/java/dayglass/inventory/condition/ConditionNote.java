package dayglass.inventory.condition;

import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.picture.Picture;
import java.time.Instant;
import java.util.List;

/**
 * A note of what was seen on a unit. It is never changed: a mistake is mended by a note that resolves it.
 *
 * @param resolves earlier findings of the same unit that no longer stand
 * @param pictures in their order
 */
public record ConditionNote(
        Unit.Id unit, Instant notedAt, Person.Id by, Observation seen, List<Id> resolves, List<Picture> pictures) {
    public ConditionNote {
        resolves = List.copyOf(resolves);
        pictures = List.copyOf(pictures);
    }

    /** The number of a note. */
    public record Id(long number) implements dayglass.base.Id {}
}
