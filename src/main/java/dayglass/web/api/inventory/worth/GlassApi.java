package dayglass.web.api.inventory.worth;

import dayglass.inventory.worth.Footing;
import dayglass.inventory.worth.MyGlass;
import dayglass.shelf.FootingJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/my-glass}. */
public final class GlassApi {
    private final MyGlass glass;

    public GlassApi(MyGlass glass) {
        this.glass = glass;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/my-glass", this::show);
    }

    private void show(Context ctx) {
        Requests.onlyParameters(ctx, FootingJson.NAMES.toArray(String[]::new));
        Replies.json(ctx, GlassJson.write(glass.by(footing(ctx))));
    }

    private static Footing footing(Context ctx) {
        Json.Members asked = Json.object();
        ctx.queryParamMap().forEach((name, values) -> values.forEach(value -> asked.put(name, value)));
        return FootingJson.reader().readAll(asked.build()).fold(footing -> footing, faults -> {
            throw Requests.badParameter(
                    faults.get(0).pointer().substring(1), "it " + faults.get(0).message());
        });
    }
}
