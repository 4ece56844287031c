package dayglass.web.error;

import dayglass.base.Fault;
import dayglass.base.Problem;
import dayglass.wire.Json;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ends the handling of a request with a problem document; thrown by handlers and turned into the answer in one place. */
public final class Refusal extends RuntimeException {
    private final ProblemKind kind;
    private final transient Map<String, Json> members = new LinkedHashMap<>();
    private final transient Map<String, String> headers = new LinkedHashMap<>();

    /** A refusal that says in {@code detail} what stands in the way and how to mend it. */
    public Refusal(ProblemKind kind, String detail) {
        super(detail, null, false, false);
        this.kind = kind;
    }

    public static Refusal of(Problem problem) {
        Refusal refusal = new Refusal(ProblemKind.of(problem.code()), problem.detail());
        return problem.faults().isEmpty() ? refusal : refusal.with("faults", faults(problem.faults()));
    }

    /** The refusal of a body with faults. */
    public static Refusal faulty(List<Fault> faults) {
        return of(Problem.faulty(faults));
    }

    private static Json faults(List<Fault> faults) {
        return Json.list(faults.stream()
                .map(fault -> Json.object()
                        .put("pointer", fault.pointer())
                        .put("message", fault.message())
                        .build())
                .toList());
    }

    /** Adds a member to the document. */
    public Refusal with(String name, Json value) {
        members.put(name, value);
        return this;
    }

    public Refusal withHeader(String name, String value) {
        headers.put(name, value);
        return this;
    }

    public ProblemKind kind() {
        return kind;
    }

    Map<String, String> headers() {
        return headers;
    }

    /** The problem document. */
    Json document() {
        Json.Members document = Json.object()
                .put("type", kind.type())
                .put("title", kind.title())
                .put("status", kind.status())
                .put("detail", String.valueOf(getMessage()));
        members.forEach(document::put);
        return document.build();
    }
}
