package dayglass.web.api;

import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.http.Context;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The versions that a change may be based on, as its header If-Match says.
 *
 * <p>Source: RFC 9110, sections 8.8.3.2 and 13.1.1: comparison is strong, so that a weak tag matches nothing; a star
 * matches whatever there is.
 *
 * @param any the header is a star
 * @param tags the strong tags, without their quotes
 */
public record IfMatch(boolean any, Set<String> tags) {
    private static final String OPAQUE = "\"([\\x21\\x23-\\x7E\\x80-\\xFF]*)\"";
    private static final Pattern ENTRY = Pattern.compile("[ \t]*(?:(W/)?" + OPAQUE + ")?[ \t]*(?:,|$)");

    /** Reads the header, and refuses a request without it or with one that cannot be read. */
    public static IfMatch of(Context ctx) {
        List<String> headers = Collections.list(ctx.req().getHeaders("If-Match"));
        String header = String.join(",", headers);
        if (header.isBlank()) {
            throw new Refusal(
                    ProblemKind.VERSION_REQUIRED,
                    "Say which version this is based on: send the ETag that came with it in the header If-Match.");
        }
        return header.strip().equals("*") ? new IfMatch(true, Set.of()) : new IfMatch(false, parse(header));
    }

    private static Set<String> parse(String header) {
        Set<String> tags = new HashSet<>();
        Matcher entry = ENTRY.matcher(header);
        int at = 0;
        while (at < header.length()) {
            entry.region(at, header.length());
            if (!entry.lookingAt()) {
                throw new Refusal(
                        ProblemKind.MALFORMED, "The header If-Match must be *, or ETags in quotes such as \"3\".");
            }
            if (entry.group(2) != null && entry.group(1) == null) {
                tags.add(entry.group(2));
            }
            at = entry.end();
        }
        return tags;
    }

    public boolean matches(long version) {
        return any || tags.contains(Long.toString(version));
    }

    /**
     * The refusal of one who came too late, with what is there now.
     *
     * @param which in words that a version can follow: {@code This job is}
     */
    public static Refusal stale(String which, long version, Json.Obj current) {
        return new Refusal(
                        ProblemKind.STALE,
                        which + " at version " + version + ", shown as \"current\"; base the change on that.",
                        Json.object().put("current", current).build())
                .withHeader("ETag", tag(version));
    }

    /** The strong tag of a version. */
    public static String tag(long version) {
        return "\"" + version + "\"";
    }
}
