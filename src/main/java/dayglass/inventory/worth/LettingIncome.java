package dayglass.inventory.worth;

import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.life.MoneySoFar;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What units earned by being let to others. */
@FunctionalInterface
public interface LettingIncome {
    /** For a house that keeps no record of letting: every day out counts as the house's own use. */
    LettingIncome UNRECORDED = unit -> Optional.empty();

    /** What a unit earned; empty where letting is not recorded at all. */
    Optional<Lettings> of(Unit.Id unit);

    /**
     * The lettings of one unit.
     *
     * @param income what was had for them, by day
     * @param bookings those that were lettings, and so no use of the house's own
     */
    record Lettings(List<MoneySoFar.Line> income, Set<Occupation.Id> bookings) {
        public static final Lettings NONE = new Lettings(List.of(), Set.of());

        public Lettings {
            income = List.copyOf(income);
            bookings = Set.copyOf(bookings);
        }
    }
}
