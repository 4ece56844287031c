package dayglass.web.error;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.wire.Json;
import dayglass.wire.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ends the handling of a request with a problem document; thrown by handlers and answered in one place. */
public final class Refusal extends RuntimeException {
    private final transient Problem problem;
    private final transient Map<String, String> headers = new LinkedHashMap<>();

    private Refusal(Problem problem) {
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    /** A refusal that says in {@code detail} what stands in the way and how to mend it. */
    public Refusal(ProblemKind kind, String detail) {
        this(kind, detail, Json.object().build());
    }

    /** A refusal with further members in its document. */
    public Refusal(ProblemKind kind, String detail, Json.Obj more) {
        this(kind.document(detail, more));
    }

    public static Refusal of(dayglass.base.Problem problem) {
        return problem.faults().isEmpty()
                ? new Refusal(ProblemKind.of(problem.code()), problem.detail())
                : faulty(problem.faults());
    }

    /** What was done; where it was refused, handling ends with that. */
    public static <T> T require(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw of(problem);
        });
    }

    /** The refusal of a body with faults. */
    public static Refusal faulty(List<Fault> faults) {
        return new Refusal(Problem.faulty(faults));
    }

    /** A refusal whose document is made elsewhere. */
    public static Refusal of(Problem problem) {
        return new Refusal(problem);
    }

    /** Adds a header to the answer. */
    public Refusal withHeader(String name, String value) {
        headers.put(name, value);
        return this;
    }

    public Problem problem() {
        return problem;
    }

    public Map<String, String> headers() {
        return headers;
    }
}
