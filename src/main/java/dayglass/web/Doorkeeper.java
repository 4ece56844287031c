package dayglass.web;

import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.web.request.Utf8;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Keeps other sites out, since no password is asked: a request must name this machine (or the address that the server
 * was bound to) as its host, so that no foreign name can be made to point here, and only pages of this server may make
 * a browser write.
 */
final class Doorkeeper implements Handler {
    private static final Set<HandlerType> READING =
            Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS, HandlerType.TRACE);
    private static final Pattern BROKEN_ESCAPE = Pattern.compile("%(?![0-9A-Fa-f]{2})");
    private static final Set<String> EVERY_ADDRESS = Set.of("0.0.0.0", "::", "[::]");

    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    private final boolean open;
    private final String bound;

    /** A doorkeeper of a server bound to this address; one bound to all addresses is meant for any name. */
    Doorkeeper(String boundTo) {
        String host = boundTo.toLowerCase(Locale.ROOT);
        this.open = EVERY_ADDRESS.contains(host);
        this.bound = host.contains(":") && !host.startsWith("[") ? "[" + host + "]" : host;
    }

    @Override
    public void handle(Context ctx) {
        requireWhole(ctx.req().getRequestURI());
        requireWhole(Optional.ofNullable(ctx.queryString()).orElse(""));
        String authority = Optional.ofNullable(ctx.header("Host")).orElse("").toLowerCase(Locale.ROOT);
        String host = authority.replaceFirst(":[0-9]*$", "");
        if (!open && !LOOPBACK.contains(host) && !host.equals(bound)) {
            throw new Refusal(
                    ProblemKind.WRONG_HOST,
                    "This server answers to localhost" + (LOOPBACK.contains(bound) ? "" : " and " + bound)
                            + ", not to the host that the request names.");
        }
        if (!READING.contains(ctx.method()) && comesFromElsewhere(ctx, authority)) {
            throw new Refusal(
                    ProblemKind.CROSS_ORIGIN,
                    "A page of another site asked for this; only pages of this server may write here.");
        }
    }

    /** What is broken in the address would only come to light wherever it is first decoded. */
    private static void requireWhole(String encoded) {
        if (BROKEN_ESCAPE.matcher(encoded).find()) {
            throw new Refusal(ProblemKind.MALFORMED, "The address has a % that two hexadecimal digits do not follow.");
        }
        if (!Utf8.isEncodedText(encoded.getBytes(StandardCharsets.ISO_8859_1))) {
            throw new Refusal(ProblemKind.MALFORMED, "The address holds bytes that are no UTF-8: encode it in that.");
        }
    }

    /** Browsers say where a request comes from; programs that are no browsers send neither header. */
    private static boolean comesFromElsewhere(Context ctx, String authority) {
        String site = ctx.header("Sec-Fetch-Site");
        if (site != null && !site.equals("same-origin") && !site.equals("none")) {
            return true;
        }
        String origin = ctx.header("Origin");
        return origin != null && !origin.toLowerCase(Locale.ROOT).equals("http://" + authority);
    }
}
