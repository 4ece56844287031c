package dayglass.planning;

import dayglass.base.Money;
import dayglass.job.Job;
import java.time.Instant;
import java.util.Optional;

/**
 * A costing as it was made: what was asked, what was answered, by which engine. It never changes.
 *
 * @param request the resolved request
 * @param answer exactly what was answered
 */
public record KeptCosting(Summary summary, Document request, Document answer) {

    /** The number of a costing. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * What a list shows of it.
     *
     * @param job the job it was made for; empty for a bare request
     * @param timeLimitSeconds empty where none was set
     */
    public record Summary(
            Optional<Job.Id> job,
            String jobName,
            Instant createdAt,
            String engineVersion,
            Optional<Integer> timeLimitSeconds,
            Money total,
            boolean optimal) {}

    /**
     * A text exactly as it was read or answered.
     *
     * @param json in the contract's form
     * @param sha256 of its UTF-8 bytes, in hexadecimal
     */
    public record Document(String json, String sha256) {}
}
