package dayglass.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/** The style sheet, the script and the mark; these and nothing else. */
public final class Assets {
    private static final Map<String, String> TYPES = Map.of(
            "dayglass.css", "text/css; charset=utf-8",
            "dayglass.js", "text/javascript; charset=utf-8",
            "mark.svg", "image/svg+xml");

    public void route(RoutesConfig routes) {
        TYPES.forEach((name, type) -> routes.get("/static/" + name, ctx -> send(ctx, name, type)));
    }

    private static void send(Context ctx, String name, String type) {
        try (InputStream content = Assets.class.getResourceAsStream("/static/" + name)) {
            if (content == null) {
                throw new IllegalStateException("the program lacks its file " + name);
            }
            ctx.header("X-Content-Type-Options", "nosniff")
                    .header("Cache-Control", "no-cache")
                    .contentType(type)
                    .result(content.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("the program cannot read its file " + name, e);
        }
    }
}
