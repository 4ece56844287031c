package dayglass.web.request;

import io.javalin.http.Context;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Whole numbers from 1 on as addresses, queries and forms write them. */
public final class PathNumbers {
    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,17}");

    private PathNumbers() {}

    /** Empty where the text is no such number; anything else names nothing that exists. */
    public static OptionalLong of(String text) {
        return NUMBER.matcher(text).matches() ? OptionalLong.of(Long.parseLong(text)) : OptionalLong.empty();
    }

    /** The number in this place of the address. */
    public static OptionalLong in(Context ctx, String name) {
        return of(ctx.pathParam(name));
    }
}
