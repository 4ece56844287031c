package dayglass.web.api.inventory;

import dayglass.catalogue.LensModel;
import dayglass.house.HouseSettings;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.shelf.LensModelJson;
import dayglass.shelf.LensSetJson;
import dayglass.shelf.UnitJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Representation;
import dayglass.web.api.Requests;
import dayglass.web.api.Resource;
import dayglass.web.api.house.Moments;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;

/** {@code /api/lens-models}, {@code /api/units} and {@code /api/lens-sets} with the history of a set. */
public final class ShelfApi {
    private static final String SETS = "/api/lens-sets";

    private final Shelf shelf;
    private final HouseSettings settings;
    private final Resource<LensSet.Id, LensSet> sets;

    /** @param settings whose zone moments are written in */
    public ShelfApi(Shelf shelf, HouseSettings settings) {
        this.shelf = shelf;
        this.settings = settings;
        this.sets = new Resource<>(new Representation<>(
                SETS, "set", shelf.sets(), LensSet.Id::new, LensSetJson.reader(), LensSetJson::write));
    }

    public void addTo(RoutesConfig routes) {
        new Resource<>(new Representation<>(
                        "/api/lens-models",
                        "lens model",
                        shelf.models(),
                        LensModel.Id::new,
                        LensModelJson.reader(),
                        LensModelJson::write))
                .addTo(routes);
        new Resource<>(
                        new Representation<>(
                                "/api/units", "unit", shelf.units(), Unit.Id::new, UnitJson.reader(), UnitJson::write),
                        new Resource.Lookup<>("tag", shelf.units()::tagged))
                .addTo(routes);
        sets.addTo(routes);
        routes.get(SETS + "/{id}/history", this::history);
    }

    private void history(Context ctx) {
        Requests.onlyParameters(ctx);
        LensSet.Id id = sets.find(ctx).id();
        ZoneId zone = settings.now().facts().zone();
        Replies.json(
                ctx,
                Json.object()
                        .put(
                                "memberships",
                                Json.list(shelf.sets().history(id).stream()
                                        .map(each -> membership(each, zone))
                                        .toList()))
                        .build());
    }

    private static Json membership(LensSet.Membership membership, ZoneId zone) {
        Json.Members members = Json.object()
                .put("unitId", membership.unit().number())
                .put("joinedAt", Moments.text(membership.joinedAt(), zone));
        membership.leftAt().ifPresent(left -> members.put("leftAt", Moments.text(left, zone)));
        return members.build();
    }
}
