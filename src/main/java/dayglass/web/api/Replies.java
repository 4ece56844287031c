package dayglass.web.api;

import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.ToLongFunction;

/** Answers in JSON. */
public final class Replies {
    private Replies() {}

    public static void json(Context ctx, Json json) {
        ctx.contentType("application/json").result(JsonPrint.bytes(json));
    }

    /** Something new, at an address of its own. */
    public static void created(Context ctx, String location, Json json) {
        ctx.status(201).header("Location", location);
        json(ctx, json);
    }

    /** The part of a list that was asked for: how many at most, and after which id. */
    public record Slice(int limit, long after) {
        private static final int MOST = 200;
        private static final int USUAL = 50;

        public static Slice of(Context ctx) {
            return new Slice(
                    (int) Requests.number(ctx, "limit", MOST).orElse(USUAL),
                    Requests.number(ctx, "after", Long.MAX_VALUE).orElse(0));
        }

        /** One more than is shown tells whether there are more. */
        public int toFetch() {
            return limit + 1;
        }

        /**
         * Shows the part, with the address of the next one where there is more.
         *
         * @param fetched up to {@link #toFetch()} of them
         * @param query further parameters of the address, each ended by an ampersand
         */
        public <T> Json.Obj page(
                String path,
                String query,
                List<T> fetched,
                ToLongFunction<T> id,
                java.util.function.Function<T, Json> show) {
            List<T> shown = fetched.subList(0, Math.min(limit, fetched.size()));
            Json.Members page = Json.object()
                    .put("items", Json.list(shown.stream().map(show).toList()));
            if (fetched.size() > limit) {
                long last = id.applyAsLong(shown.get(shown.size() - 1));
                page.put("next", path + "?" + query + "limit=" + limit + "&after=" + last);
            }
            return page.build();
        }
    }
}
