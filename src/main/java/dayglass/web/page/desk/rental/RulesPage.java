package dayglass.web.page.desk.rental;

import dayglass.base.Stored;
import dayglass.desk.DeskRules;
import dayglass.shelf.desk.DeskRulesJson;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.desk.DeskSources;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** By what rules the desk prices, promises and charges, to be read and changed. */
public final class RulesPage {
    private static final String PATH = "/desk/rules";

    private final DeskSources sources;
    private final Html html;

    public RulesPage(DeskSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get(PATH, ctx -> html.render(ctx, "rules.jte", model(now(), ctx.queryParam("saved") != null)));
        routes.post(PATH, this::keep);
    }

    private Form now() {
        Stored<DeskRules.Id, DeskRules> rules = sources.desk().rules().now();
        return FormJson.form(DeskRulesJson.write(rules.facts())).with("version", String.valueOf(rules.version()));
    }

    private Map<String, Object> model(Form form, boolean saved) {
        return Map.of(
                "form",
                form,
                "saved",
                saved,
                "currency",
                sources.household().settings().now().facts().currency().code());
    }

    private void keep(Context ctx) {
        Form form = FormJson.compact(Requests.form(ctx));
        String currency =
                sources.household().settings().now().facts().currency().code();
        Form whole = form.has("/cleaning/amount") ? form.with("/cleaning/currency", currency) : form;
        QuotePages.read(whole, DeskRulesJson.reader())
                .then(rules -> sources.desk().rules().keep(new Stored<>(DeskRules.Id.ONLY, version(form), rules)))
                .fold(
                        kept -> {
                            Requests.see(ctx, PATH + "?saved");
                            return kept;
                        },
                        problem -> {
                            html.renderFaulty(ctx, "rules.jte", model(form.with(problem), false));
                            return problem;
                        });
    }

    /** Rules that nobody has changed yet are version 0. */
    private static long version(Form form) {
        String version = form.value("version");
        return version.matches("[0-9]{1,15}") ? Long.parseLong(version) : -1;
    }
}
