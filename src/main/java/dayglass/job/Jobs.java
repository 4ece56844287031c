package dayglass.job;

import dayglass.base.VersionedCollection;

/** Every job. */
public interface Jobs extends VersionedCollection<Job.Id, Job> {}
