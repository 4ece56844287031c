package dayglass.house;

import dayglass.base.Outcome;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Answers to requests that carried a key, so that one sent twice has one effect and one answer. A refusal keeps no key:
 * it changed nothing and may be mended.
 */
public interface KeyedAnswers {
    /** An answer can be had again for at least so long. */
    int LEAST_DAYS_KEPT = 30;

    /**
     * Does the work and keeps its answer, in one transaction; or gives the answer that is kept, without doing it.
     *
     * @return refused where the key stands for another request, or as the work is
     */
    Outcome<Answer> once(Request request, Supplier<Outcome<Answer>> work);

    /**
     * A request with its key.
     *
     * @param sha256 of all that tells one request from another, 64 hexadecimal digits
     */
    record Request(String key, String sha256) {}

    /** An answer as it was sent. */
    record Answer(int status, Map<String, String> headers, String body) {
        public Answer {
            headers = Map.copyOf(new TreeMap<>(headers));
        }
    }
}
