package dayglass.web.api.optics;

import dayglass.optics.check.Fit;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.wire.fit.FitRequestReader;
import dayglass.wire.fit.FitWriter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/fits}. */
public final class FitApi {
    private FitApi() {}

    public static void addTo(RoutesConfig routes) {
        routes.post("/api/fits", FitApi::judge);
    }

    private static void judge(Context ctx) {
        Requests.onlyParameters(ctx);
        Replies.json(ctx, FitWriter.write(Fit.of(Requests.body(ctx, FitRequestReader.request()))));
    }
}
