package dayglass.planning;

import dayglass.base.Money;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Question;
import dayglass.job.Job;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.JsonText;
import dayglass.wire.costing.AnswerReader;
import dayglass.wire.costing.CostingRequestReader;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
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
    public record Document(String json, String sha256) {
        static Document of(Json json) {
            String text = JsonPrint.pretty(json);
            return new Document(text, sha256Of(text));
        }

        public Json tree() {
            return JsonText.parse(json).fold(tree -> tree, faults -> {
                throw new IllegalStateException("a kept text is no JSON: " + faults);
            });
        }

        private static String sha256Of(String text) {
            try {
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
                return HexFormat.of().formatHex(digest);
            } catch (NoSuchAlgorithmException impossible) {
                throw new IllegalStateException("every Java platform has SHA-256", impossible);
            }
        }
    }

    /** What was answered. */
    public Answer answered() {
        return AnswerReader.read(answer.json());
    }

    /** The question that was asked. */
    public Question question() {
        return CostingRequestReader.read(request.json().getBytes(StandardCharsets.UTF_8))
                .fold(question -> question, faults -> {
                    throw new IllegalStateException("a kept request is faulty: " + faults);
                });
    }
}
