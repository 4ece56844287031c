package dayglass.web.error;

import dayglass.wire.JsonPrint;
import dayglass.wire.Problem;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Answers every exception that leaves a handler with a problem document. */
public final class Errors {
    /** Where a request keeps the problem that was its answer, for those who show it in another form. */
    public static final String PROBLEM = "dayglass.problem";

    private static final int UNAVAILABLE = 503;
    private static final String RETRY_AFTER_SECONDS = "10";
    private static final Logger LOG = Logger.getLogger(Errors.class.getName());

    private Errors() {}

    public static void configure(JavalinConfig config) {
        config.routes.exception(Refusal.class, (refusal, ctx) -> answer(ctx, refusal));
        config.routes.exception(
                HttpResponseException.class, (exception, ctx) -> answer(ctx, fromServer(ctx, exception)));
        config.routes.exception(Exception.class, (exception, ctx) -> answer(ctx, failed(ctx, exception)));
        config.jetty.modifyServer(server -> server.setErrorHandler(new ServerErrors()));
    }

    private static void answer(Context ctx, Refusal refusal) {
        refusal.headers().forEach(ctx::header);
        if (refusal.problem().status() == UNAVAILABLE) {
            ctx.header("Retry-After", RETRY_AFTER_SECONDS);
        }
        ctx.attribute(PROBLEM, refusal.problem());
        ctx.status(refusal.problem().status())
                .contentType(Problem.MEDIA_TYPE)
                .result(JsonPrint.bytes(refusal.problem().toJson()));
    }

    private static Refusal fromServer(Context ctx, HttpResponseException exception) {
        if (exception instanceof MethodNotAllowedResponse) {
            // What is allowed is called otherwise where a browser asks; HEAD is answered wherever GET is.
            String allowed = exception.getDetails().values().stream()
                    .findFirst()
                    .orElse("")
                    .replaceFirst("\\bGET\\b", "GET, HEAD");
            return new Refusal(
                            ProblemKind.METHOD_NOT_ALLOWED,
                            ctx.method().name() + " is not among what can be done to " + ctx.path() + ": " + allowed
                                    + ".")
                    .withHeader("Allow", allowed);
        }
        ProblemKind kind = ProblemKind.ofStatus(exception.getStatus());
        return kind == ProblemKind.NOT_FOUND
                ? new Refusal(kind, "There is nothing at " + ctx.path() + "; /reference lists what there is.")
                : new Refusal(kind, kind.title() + ".");
    }

    private static Refusal failed(Context ctx, Exception exception) {
        LOG.log(Level.SEVERE, exception, () -> ctx.method().name() + " " + ctx.path() + " failed");
        return new Refusal(ProblemKind.UNEXPECTED, "The program failed at this request; its log says why.");
    }
}
