package dayglass.desk;

import dayglass.base.Outcome;
import dayglass.base.Stored;

/** The desk's rules; version 0 stands for the usual ones, before a house set its own. */
public interface KeptRules {
    Stored<DeskRules.Id, DeskRules> now();

    /** Refused as stale where another change came first. */
    Outcome<Stored<DeskRules.Id, DeskRules>> keep(Stored<DeskRules.Id, DeskRules> rules);
}
