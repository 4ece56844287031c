package dayglass.web.page.verdict;

import dayglass.cost.plan.StopSignal;
import dayglass.cost.scenario.Verdict;
import dayglass.house.Household;
import dayglass.web.page.Html;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.wire.verdict.PublishedTables;
import dayglass.wire.verdict.VerdictRequestReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code /verdict}: a form whose answer stands at its own address, so that it can be kept, sent and printed. */
public final class VerdictPages {
    private static final String TEMPLATE = "verdict.jte";

    private final Household household;
    private final Html html;

    public VerdictPages(Household household, Html html) {
        this.household = household;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/verdict", this::show);
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
                            Verdict verdict = Verdict.of(question, StopSignal.NEVER, done -> {})
                                    .orElseThrow();
                            html.render(ctx, TEMPLATE, model(sent, Optional.of(VerdictView.of(verdict))));
                            return true;
                        },
                        faults -> {
                            Form faulty = sent.with(VerdictForm.placed(faults));
                            html.renderFaulty(ctx, TEMPLATE, model(faulty, Optional.empty()));
                            return false;
                        });
    }

    private String currency() {
        return household.settings().now().facts().currency().code();
    }

    private static Map<String, Object> model(Form form, Optional<VerdictView> view) {
        Map<String, Object> model = new HashMap<>();
        model.put("form", form);
        model.put("views", view.stream().toList());
        model.put("tables", List.copyOf(PublishedTables.KNOWN.byName().keySet()));
        return model;
    }
}
