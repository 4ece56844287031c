package dayglass.web.page.verdict;

import dayglass.base.Problem;
import dayglass.cost.plan.StopSignal;
import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictQuestion;
import dayglass.house.Household;
import dayglass.paper.PaperSize;
import dayglass.planning.past.OwnPast;
import dayglass.web.error.Refusal;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.request.PaperAsked;
import dayglass.web.weighing.Weighing;
import dayglass.web.weighing.Weighings;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.verdict.PublishedTables;
import dayglass.wire.verdict.VerdictRequestReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** {@code /verdict}: a form whose answer stands at its own address, so that it can be kept, sent and printed. */
public final class VerdictPages {
    private static final String TEMPLATE = "verdict.jte";

    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final Duration STOPPING = Duration.ofSeconds(3);

    private final Household household;
    private final OwnPast past;
    private final Weighings weighings;
    private final VerdictPaper paper;
    private final Html html;

    /** What is under way by the query of its address, so that the same address leads to it again. */
    private final Map<String, Long> byQuery = new ConcurrentHashMap<>();

    public VerdictPages(Household household, OwnPast past, Weighings weighings, VerdictPaper paper, Html html) {
        this.paper = paper;
        this.household = household;
        this.past = past;
        this.weighings = weighings;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/verdict", this::show);
        routes.get("/verdict/own", this::beginWithOwn);
        routes.get("/verdict.pdf", this::print);
        routes.get("/verdict/runs/{number}/state", this::state);
        FormRoutes.take(routes, "/verdict/runs/{number}/stop", "/verdict", this::stop);
    }

    /** The form with what the house's own past says, not weighed yet. */
    private void beginWithOwn(Context ctx) {
        html.render(ctx, TEMPLATE, model(VerdictForm.own(past.read(), currency()), Optional.empty()));
    }

    private void show(Context ctx) {
        if (ctx.queryParamMap().isEmpty()) {
            html.render(ctx, TEMPLATE, model(VerdictForm.first(currency()), Optional.empty()));
            return;
        }
        Form sent = FormJson.compact(Form.sent(ctx.queryParamMap()));
        Form request = VerdictForm.request(sent);
        FormJson.read(request, VerdictRequestReader.request())
                .fold(
                        question -> {
                            weigh(ctx, sent, question);
                            return true;
                        },
                        faults -> {
                            Form faulty = sent.with(VerdictForm.placed(faults));
                            html.renderFaulty(ctx, TEMPLATE, model(faulty, Optional.empty()));
                            return false;
                        });
    }

    /** The same address as of the page, printed; {@code paper} says on which sheet. */
    private void print(Context ctx) {
        Form request = VerdictForm.request(FormJson.compact(Form.sent(ctx.queryParamMap())));
        PaperSize size = PaperAsked.of(ctx);
        FormJson.read(request, VerdictRequestReader.request())
                .fold(
                        question -> {
                            Verdict verdict = Verdict.of(question, StopSignal.NEVER, done -> {});
                            ctx.contentType("application/pdf")
                                    .header("Content-Disposition", "inline; filename=\"verdict.pdf\"")
                                    .header("Cache-Control", "no-store")
                                    .result(paper.print(verdict, size));
                            return true;
                        },
                        faults -> {
                            Requests.see(ctx, "/verdict?" + ctx.queryString());
                            return false;
                        });
    }

    /** Shows the verdict where it comes within a second, else the page that waits for it at the same address. */
    private void weigh(Context ctx, Form sent, VerdictQuestion question) {
        String query = Optional.ofNullable(ctx.queryString()).orElse("");
        Weighing weighing = Optional.ofNullable(byQuery.get(query))
                .flatMap(weighings::find)
                .or(() -> weighings.start(question))
                .orElseThrow(() -> Refusal.of(new Problem(
                        Problem.Code.BUSY,
                        "Several verdicts are being weighed already: wait for one to end, then load this page"
                                + " again.")));
        if (weighing.endsWithin(PATIENCE)) {
            byQuery.remove(query);
            Verdict verdict = weighing.verdict()
                    .orElseThrow(() -> new IllegalStateException("verdict " + weighing.number() + " failed"));
            Map<String, Object> model = model(sent, Optional.of(VerdictView.of(verdict)));
            model.put("query", query);
            html.render(ctx, TEMPLATE, model);
            return;
        }
        byQuery.put(query, weighing.number());
        html.render(
                ctx,
                "verdictrun.jte",
                Map.of(
                        "number", weighing.number(),
                        "query", query,
                        "done", weighing.drawsDone(),
                        "draws", weighing.draws(),
                        "elapsed", weighings.elapsedSeconds(weighing)));
    }

    private Weighing find(Context ctx) {
        return weighings.find(Requests.number(ctx, "number")).orElseThrow(() -> Requests.missing(ctx));
    }

    private void state(Context ctx) {
        Weighing weighing = find(ctx);
        ctx.contentType("application/json")
                .header("Cache-Control", "no-store")
                .result(JsonPrint.bytes(Json.object()
                        .put("over", weighing.over())
                        .put("elapsedSeconds", weighings.elapsedSeconds(weighing))
                        .put("drawsDone", weighing.drawsDone())
                        .build()));
    }

    private void stop(Context ctx) {
        Weighing weighing = find(ctx);
        String query = Requests.form(ctx).value("query");
        weighing.stop();
        weighing.endsWithin(STOPPING);
        Requests.see(ctx, query.isBlank() ? "/verdict" : "/verdict?" + query);
    }

    private String currency() {
        return household.settings().now().facts().currency().code();
    }

    private static Map<String, Object> model(Form form, Optional<VerdictView> view) {
        Map<String, Object> model = new HashMap<>();
        model.put("form", form);
        model.put("query", "");
        model.put("views", view.stream().toList());
        model.put("tables", List.copyOf(PublishedTables.KNOWN.byName().keySet()));
        return model;
    }
}
