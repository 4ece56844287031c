package dayglass.books;

import dayglass.job.Job;

/**
 * The cost codes of a job: of every costing of it, and kept for options that it may consider again.
 *
 * @param codes of any option; of one that a costing does not have, nothing comes
 */
public record JobCodes(Job.Id job, CostCodes codes) {}
