package dayglass.web.page.desk.today;

import dayglass.desk.today.GatherToday;
import dayglass.web.api.Requests;
import dayglass.web.page.Html;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** {@code /desk/today}: what goes out, comes back, is late, is short, needs testing. */
public final class TodayPage {
    private final GatherToday gather;
    private final Html html;

    public TodayPage(GatherToday gather, Html html) {
        this.gather = gather;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/desk/today", this::show);
    }

    private void show(Context ctx) {
        TodayWords words =
                new TodayWords(gather.of(Requests.day(ctx, "date").orElseGet(gather::today)), gather.today());
        html.render(ctx, "today.jte", Map.of("view", words.view()));
    }
}
