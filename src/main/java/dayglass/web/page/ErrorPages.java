package dayglass.web.page;

import dayglass.web.error.Errors;
import dayglass.wire.Problem;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** Shows a problem document as a page where a browser asked; programs and the interface keep the document. */
public final class ErrorPages {
    private final Html html;

    public ErrorPages(Html html) {
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.after(ctx -> {
            Problem problem = ctx.attribute(Errors.PROBLEM);
            if (problem != null && isForPeople(ctx)) {
                html.render(
                        ctx,
                        "error.jte",
                        Map.of("status", problem.status(), "title", problem.title(), "detail", problem.detail()));
            }
        });
    }

    public static boolean isForPeople(Context ctx) {
        return !ctx.path().startsWith("/api/")
                && Optional.ofNullable(ctx.header("Accept")).orElse("").contains("text/html");
    }
}
