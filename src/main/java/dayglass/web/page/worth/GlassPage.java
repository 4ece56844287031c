package dayglass.web.page.worth;

import dayglass.inventory.Shelf;
import dayglass.inventory.worth.Footing;
import dayglass.inventory.worth.MyGlass;
import dayglass.shelf.FootingJson;
import dayglass.web.page.Html;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;

/** {@code /shelf/my-glass}: its address holds what all is weighed by. */
public final class GlassPage {
    private static final String TEMPLATE = "myglass.jte";

    private final MyGlass glass;
    private final Shelf shelf;
    private final Html html;

    public GlassPage(MyGlass glass, Shelf shelf, Html html) {
        this.glass = glass;
        this.shelf = shelf;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/shelf/my-glass", this::show);
    }

    private void show(Context ctx) {
        Form usual = FormJson.form(FootingJson::write, Footing.USUAL);
        if (ctx.queryParamMap().isEmpty()) {
            html.render(ctx, TEMPLATE, model(usual, Footing.USUAL));
            return;
        }
        Form sent = Form.sent(ctx.queryParamMap());
        Map<String, String> all = new LinkedHashMap<>(usual.values());
        all.putAll(sent.values());
        Form form = new Form(all, sent.faults(), "");
        FormJson.read(form, FootingJson.reader())
                .fold(
                        footing -> {
                            html.render(ctx, TEMPLATE, model(form, footing));
                            return true;
                        },
                        faults -> {
                            html.renderFaulty(ctx, TEMPLATE, model(form.with(faults), Footing.USUAL));
                            return false;
                        });
    }

    private Map<String, Object> model(Form form, Footing footing) {
        return Map.of("form", form, "view", new GlassRows(glass.by(footing), shelf.modelNames()).view());
    }
}
