package dayglass.books.gear;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.books.entry.Posted;
import dayglass.job.Job;
import java.util.List;

/** All gear in the books; what has entries stays. */
public interface GearList extends VersionedCollection<Gear.Id, Gear> {
    /** By id, in order. */
    List<Stored<Gear.Id, Gear>> of(Job.Id job);

    GearEntries entries(Stored<Gear.Id, Gear> gear);

    /** Says what entries that were just posted are for. */
    void link(Gear.Id gear, GearEntries.Deed deed, List<Posted> posted);

    /** Says what an entry that was just linked was brought in from. */
    void cameFrom(GearEntries.Source source, Posted posted);
}
