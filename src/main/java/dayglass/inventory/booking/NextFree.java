package dayglass.inventory.booking;

import java.time.Instant;
import java.util.List;

/** The next moment from which a unit is free for as long as a stay takes, turnaround included. */
final class NextFree {
    private NextFree() {}

    /** @param taken what occupies the unit from the stay's beginning on, by time and without overlap */
    static Instant from(Stay wanted, List<Stay> taken) {
        Stay shifted = wanted;
        for (Stay other : taken) {
            if (shifted.overlaps(other)) {
                shifted = shifted.from(other.freeAt());
            }
        }
        return shifted.out();
    }
}
