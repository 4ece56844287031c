package dayglass.web.error;

import dayglass.wire.Json;
import dayglass.wire.Problem;
import java.util.Locale;

/** The one table of refusals: what each is called and the status that it has. */
public enum ProblemKind {
    MALFORMED(400, "The request is malformed"),
    FAULTY_REQUEST(400, "The request is faulty"),
    CROSS_ORIGIN(403, "Another site may not write here"),
    NOT_FOUND(404, "There is no such thing"),
    METHOD_NOT_ALLOWED(405, "This cannot be done to it"),
    ALREADY_THERE(409, "Another one has it"),
    STILL_USED(409, "It is still used"),
    STALE(412, "It was changed since"),
    TOO_LARGE(413, "The body is too large"),
    ADDRESS_TOO_LONG(414, "The address is too long"),
    UNSUPPORTED_MEDIA_TYPE(415, "The body is in a form that is not read here"),
    WRONG_HOST(421, "Another host was asked for"),
    CANNOT_BE_DONE(422, "It cannot be done"),
    NO_PLAN(422, "No plan exists"),
    NOBODY_NAMED(422, "It is not said who does it"),
    VERSION_REQUIRED(428, "The version it is based on is missing"),
    HEADERS_TOO_LARGE(431, "The headers are too large"),
    UNEXPECTED(500, "Something went wrong"),
    HTTP_VERSION(505, "This version of HTTP is not spoken here"),
    OUT_OF_TIME(503, "No plan was found in time"),
    BUSY(503, "Too much is being worked out already");

    private final int status;
    private final String title;

    ProblemKind(int status, String title) {
        this.status = status;
        this.title = title;
    }

    public int status() {
        return status;
    }

    public String title() {
        return title;
    }

    /** The document of a problem of this kind. */
    public Problem document(String detail, Json.Obj more) {
        return new Problem(name().toLowerCase(Locale.ROOT).replace('_', '-'), title, status, detail, more);
    }

    public static ProblemKind of(dayglass.base.Problem.Code code) {
        return switch (code) {
            case FAULTY -> FAULTY_REQUEST;
            case NOT_FOUND -> NOT_FOUND;
            case ALREADY_THERE -> ALREADY_THERE;
            case STILL_USED -> STILL_USED;
            case STALE -> STALE;
            case CANNOT_BE_DONE -> CANNOT_BE_DONE;
            case BUSY -> BUSY;
        };
    }

    /** The kind for a status that the server underneath gives by itself. */
    public static ProblemKind ofStatus(int status) {
        for (ProblemKind kind : values()) {
            if (kind.status == status) {
                return kind;
            }
        }
        return status < 500 ? MALFORMED : UNEXPECTED;
    }
}
