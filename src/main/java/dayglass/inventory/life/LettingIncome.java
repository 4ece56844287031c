package dayglass.inventory.life;

import dayglass.inventory.Unit;
import java.util.Map;
import java.util.Optional;

/** What units earned by being let to others. */
public interface LettingIncome {
    /** Of every unit that was let or is to be, read in one go; empty where the house never recorded a letting. */
    Optional<Map<Unit.Id, Lettings>> all();

    Lettings of(Unit.Id unit);
}
