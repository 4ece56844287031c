package dayglass.web.api.optics;

import dayglass.catalogue.Camera;
import dayglass.catalogue.Cameras;
import dayglass.catalogue.Mount;
import dayglass.catalogue.OwnMounts;
import dayglass.optics.Formats;
import dayglass.optics.Mounts;
import dayglass.shelf.CameraJson;
import dayglass.shelf.MountJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Representation;
import dayglass.web.api.Requests;
import dayglass.web.api.Resource;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** {@code /api/cameras}, {@code /api/mounts} and {@code /api/formats}: what a fit is asked on. */
public final class GearApi {
    private final Cameras cameras;
    private final OwnMounts mounts;

    public GearApi(Cameras cameras, OwnMounts mounts) {
        this.cameras = cameras;
        this.mounts = mounts;
    }

    public void addTo(RoutesConfig routes) {
        new Resource<>(new Representation<>(
                        "/api/cameras", "camera", cameras, Camera.Id::new, CameraJson.reader(), CameraJson::write))
                .addTo(routes);
        new Resource<>(new Representation<>(
                        "/api/mounts", "mount", mounts, Mount.Id::new, MountJson.reader(), MountJson::write))
                .addTo(routes);
        routes.get("/api/formats", this::formats);
    }

    private void formats(Context ctx) {
        Requests.onlyParameters(ctx);
        List<Json> formats = Formats.FORMATS.stream().<Json>map(GearApi::show).toList();
        List<Json> deliveries = Formats.DELIVERIES.stream()
                .<Json>map(each -> Json.object()
                        .put("name", each.name())
                        .put("aspect", each.aspect().toPlainString())
                        .put("source", each.source())
                        .build())
                .toList();
        List<Json> known = mounts.all().byName().entrySet().stream()
                .<Json>map(GearApi::show)
                .toList();
        Replies.json(
                ctx,
                Json.object()
                        .put("formats", Json.list(formats))
                        .put("deliveries", Json.list(deliveries))
                        .put("mounts", Json.list(known))
                        .build());
    }

    private static Json show(Formats.Format format) {
        return Json.object()
                .put("name", format.name())
                .put("width", format.widthMm().toPlainString())
                .put("height", format.heightMm().toPlainString())
                .put("source", format.source())
                .build();
    }

    private static Json show(Map.Entry<String, BigDecimal> mount) {
        return Json.object()
                .put("name", mount.getKey())
                .put("flangeMm", mount.getValue().toPlainString())
                .put("published", Mounts.KNOWN.flangeMm(mount.getKey()).isPresent())
                .build();
    }
}
