package dayglass.web.api.house;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.house.HouseSettings;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/house}: read and changed, always there. */
public final class HouseApi {
    private static final String PATH = "/api/house";

    private final HouseSettings settings;

    public HouseApi(HouseSettings settings) {
        this.settings = settings;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(PATH, this::read);
        routes.put(PATH, this::change);
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        show(ctx, settings.now());
    }

    private void change(Context ctx) {
        Requests.onlyParameters(ctx);
        IfMatch ifMatch = IfMatch.of(ctx);
        House facts = Requests.body(ctx, HouseJson.reader());
        Stored<House.Id, House> current = settings.now();
        if (!ifMatch.matches(current.version())) {
            throw stale(current);
        }
        Stored<House.Id, House> changed = settings.change(new Stored<>(current.id(), current.version(), facts))
                .fold(done -> done, problem -> {
                    throw problem.code() == Problem.Code.STALE ? stale(settings.now()) : Refusal.of(problem);
                });
        show(ctx, changed);
    }

    private static void show(Context ctx, Stored<House.Id, House> house) {
        ctx.header("ETag", IfMatch.tag(house.version()));
        Replies.json(ctx, HouseJson.whole(house));
    }

    private static Refusal stale(Stored<House.Id, House> current) {
        return IfMatch.stale("The house is", current.version(), HouseJson.whole(current));
    }
}
