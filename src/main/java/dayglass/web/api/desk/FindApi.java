package dayglass.web.api.desk;

import dayglass.base.Fault;
import dayglass.cost.Schedule;
import dayglass.desk.find.Find;
import dayglass.desk.find.Finder;
import dayglass.desk.price.PricePackage;
import dayglass.desk.words.DateWords;
import dayglass.inventory.booking.Stay;
import dayglass.shelf.desk.PackageJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** {@code /api/finds}: what can be asked for, by a few letters, a tag, a serial or a focal length. */
final class FindApi {
    private final Finder finder;
    private final PricePackage pricing;

    FindApi(Finder finder, PricePackage pricing) {
        this.finder = finder;
        this.pricing = pricing;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/finds", this::find);
    }

    private void find(Context ctx) {
        Requests.onlyParameters(ctx, "text", "dates");
        String text = Optional.ofNullable(ctx.queryParam("text")).orElse("").strip();
        if (text.isEmpty() || text.length() > Finder.LONGEST) {
            throw Refusal.faulty(List.of(new Fault("/text", "give 1 to " + Finder.LONGEST + " characters")));
        }
        Optional<Stay> stay = Optional.ofNullable(ctx.queryParam("dates"))
                .map(words -> Refusal.require(DateWords.read(words, pricing.today())))
                .map(Schedule::horizon)
                .map(pricing::stay);
        Replies.json(
                ctx,
                Json.object()
                        .put(
                                "items",
                                Json.list(finder.find(text, stay).stream()
                                        .map(FindApi::json)
                                        .toList()))
                        .build());
    }

    private static Json json(Find find) {
        Json.Members members = Json.object()
                .put("wish", PackageJson.write(find.wish()))
                .put("name", find.name())
                .put("facts", find.facts());
        find.free().ifPresent(free -> members.put("free", free.free()).put("there", free.there()));
        return members.build();
    }
}
