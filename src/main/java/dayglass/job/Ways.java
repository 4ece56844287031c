package dayglass.job;

import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import java.util.List;

/** Every way of every job. */
public interface Ways extends VersionedCollection<Way.Id, Way> {
    /** Those of one job, by id. */
    List<Stored<Way.Id, Way>> of(Job.Id job);
}
