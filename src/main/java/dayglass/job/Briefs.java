package dayglass.job;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import java.util.Optional;

/** The brief of every job that has one. */
public interface Briefs {
    Optional<Stored<Job.Id, Brief>> of(Job.Id job);

    /** Keeps the brief in place of that of the same version; 0 where there was none. */
    Outcome<Stored<Job.Id, Brief>> keep(Stored<Job.Id, Brief> brief);
}
