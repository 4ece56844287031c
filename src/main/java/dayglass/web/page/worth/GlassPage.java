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
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** {@code /shelf/my-glass}: its address holds what all is weighed by. */
public final class GlassPage {
    private static final String TEMPLATE = "myglass.jte";
    private static final String FIRST = "first";
    private static final String NUMBER = "\\d{1,9}";

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
        int first = first(ctx);
        Map<String, List<String>> asked = new LinkedHashMap<>(ctx.queryParamMap());
        asked.remove(FIRST);
        Form sent = Form.sent(asked);
        Map<String, String> all = new LinkedHashMap<>(usual.values());
        all.putAll(sent.values());
        Form form = new Form(all, sent.faults(), "");
        FormJson.read(form, FootingJson.reader())
                .fold(
                        footing -> {
                            html.render(ctx, TEMPLATE, model(form, footing, first));
                            return true;
                        },
                        faults -> {
                            html.renderFaulty(ctx, TEMPLATE, model(form.with(faults), Footing.USUAL, first));
                            return false;
                        });
    }

    /** Which unit is to be the first, counted from 0; the very first where that is no such number. */
    private static int first(Context ctx) {
        String asked = Objects.requireNonNullElse(ctx.queryParam(FIRST), "");
        return asked.matches(NUMBER) ? Integer.parseInt(asked) : 0;
    }

    private Map<String, Object> model(Form form, Footing footing, int first) {
        StringBuilder query = new StringBuilder();
        form.values()
                .forEach((name, value) -> query.append(encoded(name))
                        .append('=')
                        .append(encoded(value))
                        .append('&'));
        return Map.of(
                "form",
                form,
                "view",
                new GlassRows(glass.by(footing), shelf.modelNames()).view(first),
                "address",
                "/shelf/my-glass?" + query + FIRST + "=");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
