package dayglass.house;

import dayglass.base.Outcome;
import dayglass.base.Stored;

/** The settings of the one house, there from the start. */
public interface HouseSettings {
    Stored<House.Id, House> now();

    /** Refused as stale where another change came first. */
    Outcome<Stored<House.Id, House>> change(Stored<House.Id, House> change);
}
