package dayglass.web.api.verdict;

import dayglass.base.Problem;
import dayglass.cost.plan.StopSignal;
import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictQuestion;
import dayglass.paper.PaperSize;
import dayglass.planning.past.OwnPast;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.web.weighing.Weighing;
import dayglass.web.weighing.Weighings;
import dayglass.wire.Json;
import dayglass.wire.verdict.VerdictRequestReader;
import dayglass.wire.verdict.VerdictWriter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;

/**
 * {@code /api/verdicts}, {@code /api/past-jobs}, which says what to ask there, and {@code /api/verdict-runs} for verdicts
 * that take a while.
 */
public final class VerdictApi {
    private static final Duration STOPPING = Duration.ofSeconds(5);

    private final OwnPast past;
    private final Weighings weighings;
    private final Printer printer;

    /** Prints a verdict as PDF. */
    @FunctionalInterface
    public interface Printer {
        byte[] print(Verdict verdict, PaperSize size);
    }

    public VerdictApi(OwnPast past, Weighings weighings, Printer printer) {
        this.printer = printer;
        this.past = past;
        this.weighings = weighings;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/verdicts", VerdictApi::weigh);
        routes.post("/api/verdicts.pdf", this::print);
        routes.get("/api/past-jobs", this::past);
        routes.post("/api/verdict-runs", this::start);
        routes.get("/api/verdict-runs/{id}", ctx -> Replies.json(ctx, state(find(ctx))));
        routes.post("/api/verdict-runs/{id}/stop", this::stop);
    }

    private void print(Context ctx) {
        PaperSize size = Requests.paper(ctx);
        VerdictQuestion question = Requests.body(ctx, VerdictRequestReader.request());
        Verdict verdict = Verdict.of(question, StopSignal.NEVER, done -> {});
        ctx.contentType("application/pdf").result(printer.print(verdict, size));
    }

    private void start(Context ctx) {
        Requests.onlyParameters(ctx);
        Weighing started = weighings
                .start(Requests.body(ctx, VerdictRequestReader.request()))
                .orElseThrow(() -> Refusal.of(
                        new Problem(Problem.Code.BUSY, "Other verdicts are being weighed; try again in a while.")));
        ctx.status(202).header("Location", "/api/verdict-runs/" + started.number());
        Replies.json(ctx, state(started));
    }

    private Weighing find(Context ctx) {
        Requests.onlyParameters(ctx);
        long number = Requests.pathId(ctx);
        return weighings
                .find(number)
                .orElseThrow(() -> Refusal.of(new Problem(
                        Problem.Code.NOT_FOUND,
                        "There is no verdict under way with the id " + number + "; they are kept for half an hour.")));
    }

    private void stop(Context ctx) {
        Requests.noFacts(ctx);
        Weighing weighing = find(ctx);
        weighing.stop();
        weighing.endsWithin(STOPPING);
        Replies.json(ctx, state(weighing));
    }

    private Json state(Weighing weighing) {
        boolean over = weighing.over();
        Json.Members members = Json.object()
                .put("id", weighing.number())
                .put("over", over)
                .put("failed", over && weighing.verdict().isEmpty())
                .put("draws", weighing.draws())
                .put("drawsDone", weighing.drawsDone())
                .put("elapsedSeconds", weighings.elapsedSeconds(weighing));
        weighing.verdict().ifPresent(verdict -> members.put("verdict", VerdictWriter.write(verdict)));
        return members.build();
    }

    private void past(Context ctx) {
        Requests.onlyParameters(ctx);
        Replies.json(ctx, PastJson.write(past.read()));
    }

    private static void weigh(Context ctx) {
        Requests.onlyParameters(ctx);
        VerdictQuestion question = Requests.body(ctx, VerdictRequestReader.request());
        Verdict verdict = Verdict.of(question, StopSignal.NEVER, done -> {});
        Replies.json(ctx, VerdictWriter.write(verdict));
    }
}
