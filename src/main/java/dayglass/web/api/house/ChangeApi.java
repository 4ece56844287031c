package dayglass.web.api.house;

import dayglass.base.Stored;
import dayglass.house.Change;
import dayglass.house.Changes;
import dayglass.house.Household;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.wire.Json;
import dayglass.wire.JsonText;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** {@code /api/changes}: who changed what, read only. */
public final class ChangeApi {
    private static final String PATH = "/api/changes";

    private final Household household;

    public ChangeApi(Household household) {
        this.household = household;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(PATH, this::list);
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx, "noun", "id", "limit", "after");
        Replies.Slice slice = Replies.Slice.of(ctx);
        Changes.Of of =
                new Changes.Of(Optional.ofNullable(ctx.queryParam("noun")), Requests.number(ctx, "id", Long.MAX_VALUE));
        List<Stored<Change.Id, Change>> fetched =
                household.changes().list(of, Optional.of(new Change.Id(slice.after())), slice.toFetch());
        ZoneId zone = household.settings().now().facts().zone();
        Replies.json(
                ctx,
                slice.page(PATH, query(of), fetched, change -> change.id().number(), change -> show(change, zone)));
    }

    private static String query(Changes.Of of) {
        String noun = of.noun()
                .map(word -> "noun=" + URLEncoder.encode(word, StandardCharsets.UTF_8) + "&")
                .orElse("");
        return of.thing().isPresent() ? noun + "id=" + of.thing().getAsLong() + "&" : noun;
    }

    private static Json show(Stored<Change.Id, Change> stored, ZoneId zone) {
        Change change = stored.facts();
        Json.Members members = Json.object()
                .put("id", stored.id().number())
                .put("madeAt", Moments.text(change.madeAt(), zone))
                .put("personId", change.by().number())
                .put("noun", change.noun())
                .put("thingId", change.thing())
                .put("deed", change.deed().word());
        change.facts().ifPresent(facts -> members.put("facts", parsed(facts)));
        return members.build();
    }

    private static Json parsed(String facts) {
        return JsonText.parse(facts.getBytes(StandardCharsets.UTF_8)).fold(json -> json, faults -> {
            throw new IllegalStateException("the record of a change is no JSON: " + faults);
        });
    }
}
