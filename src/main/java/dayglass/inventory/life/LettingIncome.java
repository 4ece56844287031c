package dayglass.inventory.life;

import dayglass.base.Stored;
import dayglass.inventory.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What units earned by being let to others. */
public interface LettingIncome {
    /**
     * Of every unit that was let or is to be, read in one go; empty where the house never recorded a letting.
     *
     * @param units all that the house has or had, as they are read already
     */
    Optional<Map<Unit.Id, Lettings>> all(List<Stored<Unit.Id, Unit>> units);

    Lettings of(Unit.Id unit);
}
