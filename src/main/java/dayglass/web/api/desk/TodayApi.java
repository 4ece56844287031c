package dayglass.web.api.desk;

import dayglass.desk.today.GatherToday;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/today}: what a day asks of the desk. */
public final class TodayApi {
    private final GatherToday gather;

    public TodayApi(GatherToday gather) {
        this.gather = gather;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/today", this::show);
    }

    private void show(Context ctx) {
        Requests.onlyParameters(ctx, "date");
        Replies.json(ctx, new TodayJson(gather.of(Requests.day(ctx, "date").orElseGet(gather::today))).write());
    }
}
