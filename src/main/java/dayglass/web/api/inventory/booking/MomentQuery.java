package dayglass.web.api.inventory.booking;

import dayglass.base.Fault;
import dayglass.web.api.Requests;
import dayglass.wire.Json;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Moments in the query of an address. */
final class MomentQuery {
    private MomentQuery() {}

    static Optional<Instant> moment(Context ctx, String name, ZoneId zone) {
        return Optional.ofNullable(ctx.queryParam(name))
                .map(text -> MomentReader.moment(zone)
                        .readAll(Json.text(plus(text)))
                        .fold(moment -> moment, faults -> {
                            Fault fault = faults.get(0);
                            throw Requests.badParameter(name, fault.message());
                        }));
    }

    /** A plus sign that was not encoded arrives as a space. */
    private static String plus(String text) {
        return text.replace(' ', '+');
    }

    /** The parameters as they were given, each ended by an ampersand. */
    static String kept(Context ctx, String... names) {
        return Stream.of(names)
                .filter(name -> ctx.queryParam(name) != null)
                .map(name -> name + "="
                        + URLEncoder.encode(plus(String.valueOf(ctx.queryParam(name))), StandardCharsets.UTF_8) + "&")
                .collect(Collectors.joining());
    }
}
