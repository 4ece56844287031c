package dayglass.wire;

import dayglass.base.Fault;
import java.util.List;

/**
 * Why something was refused, as a problem document (RFC 9457, {@code application/problem+json}).
 *
 * @param kind one word for the kind of problem, hyphens between its parts; the end of its type
 * @param status the HTTP status, also where the document is printed and not sent
 * @param more further members, told after the standard ones
 */
public record Problem(String kind, String title, int status, String detail, Json.Obj more) {
    public static final String MEDIA_TYPE = "application/problem+json";

    public static Problem of(String kind, String title, int status, String detail) {
        return new Problem(kind, title, status, detail, Json.object().build());
    }

    /** A request with faults. */
    public static Problem faulty(List<Fault> faults) {
        List<Json> list = faults.stream()
                .map(fault -> (Json) Json.object()
                        .put("pointer", fault.pointer())
                        .put("message", fault.message())
                        .build())
                .toList();
        String count = faults.size() == 1 ? "One value is" : faults.size() + " values are";
        return new Problem(
                "faulty-request",
                "The request is faulty",
                400,
                count + " at fault; nothing was computed. Mend what faults lists and send it again.",
                Json.object().put("faults", Json.list(list)).build());
    }

    /** The program itself failed. */
    public static Problem unexpected() {
        return of("unexpected", "Something went wrong", 500, "The program failed; the request may be good. Try again.");
    }

    public Json toJson() {
        Json.Members members = Json.object()
                .put("type", "urn:dayglass:problem:" + kind)
                .put("title", title)
                .put("status", status)
                .put("detail", detail);
        more.members().forEach(members::put);
        return members.build();
    }
}
