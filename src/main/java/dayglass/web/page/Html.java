package dayglass.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;

/** Renders a template as the answer to a request, with the headers that every page bears. */
public final class Html {
    /** Nothing runs, loads or is sent but what comes from and goes to this server. */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);

    public void render(Context ctx, String template, Map<String, Object> parameters) {
        Utf8ByteOutput output = new Utf8ByteOutput();
        templates.render(template, parameters, output);
        ctx.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cache-Control", "no-store")
                .contentType("text/html; charset=utf-8")
                .result(output.toByteArray());
    }

    /** A page again with a form that was not taken. */
    public void renderFaulty(Context ctx, String template, Map<String, Object> parameters) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        render(ctx, template, parameters);
    }
}
