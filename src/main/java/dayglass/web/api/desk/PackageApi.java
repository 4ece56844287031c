package dayglass.web.api.desk;

import dayglass.desk.price.Alternatives.Alternative;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PricePackage;
import dayglass.shelf.desk.PackageJson;
import dayglass.shelf.desk.PriceJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/packages/price}: what a package costs, with what is worth saying of it; nothing is kept. */
final class PackageApi {
    private final PricePackage pricing;

    PackageApi(PricePackage pricing) {
        this.pricing = pricing;
    }

    void addTo(RoutesConfig routes) {
        routes.post("/api/packages/price", this::price);
    }

    private void price(Context ctx) {
        Requests.onlyParameters(ctx);
        PackageAsked asked = Requests.body(ctx, PackageJson.reader(pricing.today()));
        PricePackage.Said said = Refusal.require(pricing.withAlternatives(asked));
        Json.Members members = Json.object();
        PriceJson.write(members, said.price());
        members.put(
                "alternatives",
                Json.list(said.alternatives().stream().map(PackageApi::json).toList()));
        Replies.json(ctx, members.build());
    }

    private static Json json(Alternative alternative) {
        return Json.object()
                .put("words", alternative.words())
                .put("firstDay", alternative.schedule().horizon().from().toString())
                .put("lastDay", alternative.schedule().horizon().lastDay().toString())
                .put("total", alternative.total().amount())
                .build();
    }
}
