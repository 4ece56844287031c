package dayglass.web.api.verdict;

import dayglass.cost.plan.StopSignal;
import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictQuestion;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.wire.verdict.VerdictRequestReader;
import dayglass.wire.verdict.VerdictWriter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/verdicts}. */
public final class VerdictApi {
    private VerdictApi() {}

    public static void addTo(RoutesConfig routes) {
        routes.post("/api/verdicts", VerdictApi::weigh);
    }

    private static void weigh(Context ctx) {
        Requests.onlyParameters(ctx);
        VerdictQuestion question = Requests.body(ctx, VerdictRequestReader.request());
        Verdict verdict = Verdict.of(question, StopSignal.NEVER, done -> {}).orElseThrow();
        Replies.json(ctx, VerdictWriter.write(verdict));
    }
}
