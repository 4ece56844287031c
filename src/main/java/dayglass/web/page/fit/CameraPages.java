package dayglass.web.page.fit;

import dayglass.base.Stored;
import dayglass.catalogue.Camera;
import dayglass.catalogue.Mount;
import dayglass.optics.Mounts;
import dayglass.shelf.CameraJson;
import dayglass.shelf.MountJson;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.shelf.RecordPages;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The user's cameras, and the table of mounts. */
public final class CameraPages {
    private static final BigDecimal THINNEST_ADAPTER_MM = BigDecimal.ONE;

    private final FitSources sources;
    private final Html html;

    public CameraPages(FitSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    /** A camera in the list. */
    public record CameraRow(long id, String name, String mode, String recorded) {}

    /**
     * A mount in the table.
     *
     * @param id 0 for a published one
     * @param carries lenses of which other mounts an adapter brings onto it
     */
    public record MountRow(long id, String name, String flange, String from, String carries) {}

    public void route(RoutesConfig routes) {
        routes.get("/shelf/cameras", this::list);
        new CameraForm().route(routes);
        new MountForm().route(routes);
    }

    private void list(Context ctx) {
        List<CameraRow> cameras = Requests.all(sources.cameras()).stream()
                .map(camera -> new CameraRow(
                        camera.id().number(),
                        camera.facts().name(),
                        camera.facts().mode(),
                        FitForm.words(camera.facts().recorded())))
                .toList();
        html.render(ctx, "cameras.jte", Map.of("cameras", cameras, "mounts", mounts()));
    }

    private List<MountRow> mounts() {
        Map<String, Stored<Mount.Id, Mount>> own = new HashMap<>();
        Requests.all(sources.mounts()).forEach(mount -> own.put(mount.facts().name(), mount));
        Mounts all = sources.mounts().all();
        return all.byName().entrySet().stream()
                .map(each -> {
                    Optional<Stored<Mount.Id, Mount>> mine = Optional.ofNullable(own.get(each.getKey()));
                    return new MountRow(
                            mine.map(mount -> mount.id().number()).orElse(0L),
                            each.getKey(),
                            each.getValue().toPlainString(),
                            mine.map(mount -> mount.facts().note())
                                    .orElse(
                                            Mounts.FROM_MEMORY.contains(each.getKey())
                                                    ? "from memory: check it"
                                                    : "published"),
                            carries(each.getValue(), all));
                })
                .toList();
    }

    private static String carries(BigDecimal flange, Mounts all) {
        return all.byName().entrySet().stream()
                .filter(lens -> lens.getValue().subtract(flange).compareTo(THINNEST_ADAPTER_MM) >= 0)
                .map(lens -> lens.getKey() + " "
                        + lens.getValue().subtract(flange).stripTrailingZeros().toPlainString())
                .collect(Collectors.joining(", "));
    }

    private final class CameraForm extends RecordPages<Camera.Id, Camera> {
        CameraForm() {
            super(
                    html,
                    new Kind<>(
                            "/shelf/cameras",
                            "/shelf/cameras",
                            "fit",
                            sources.cameras(),
                            Camera.Id::new,
                            CameraJson.reader()));
        }

        @Override
        protected String template() {
            return "camera.jte";
        }

        @Override
        protected String name(Camera facts) {
            return "the camera " + facts.name() + ", " + facts.mode();
        }

        @Override
        protected Form ordered(Form sent) {
            return sent;
        }

        @Override
        protected Json json(Form form) {
            return FormJson.read(form);
        }

        @Override
        protected Form form(Camera facts) {
            Json.Members members = Json.object();
            CameraJson.write(members, facts);
            return FormJson.form(members.build());
        }

        @Override
        protected Map<String, Object> model(Optional<Stored<Camera.Id, Camera>> stored, Form form) {
            List<Choice> mounts = sources.mounts().all().byName().keySet().stream()
                    .map(mount -> new Choice(mount, mount))
                    .toList();
            return Map.of(
                    "id",
                    stored.map(camera -> camera.id().number()).orElse(0L),
                    "title",
                    stored.map(camera -> camera.facts().name()).orElse("A new camera"),
                    "mounts",
                    mounts,
                    "form",
                    form);
        }
    }

    private final class MountForm extends RecordPages<Mount.Id, Mount> {
        MountForm() {
            super(
                    html,
                    new Kind<>(
                            "/shelf/mounts",
                            "/shelf/cameras",
                            "fit",
                            sources.mounts(),
                            Mount.Id::new,
                            MountJson.reader()));
        }

        @Override
        protected String template() {
            return "mount.jte";
        }

        @Override
        protected String name(Mount facts) {
            return "the mount " + facts.name();
        }

        @Override
        protected Form ordered(Form sent) {
            return sent;
        }

        @Override
        protected Json json(Form form) {
            return FormJson.read(form);
        }

        @Override
        protected Form form(Mount facts) {
            Json.Members members = Json.object();
            MountJson.write(members, facts);
            return FormJson.form(members.build());
        }

        @Override
        protected Map<String, Object> model(Optional<Stored<Mount.Id, Mount>> stored, Form form) {
            return Map.of(
                    "id", stored.map(mount -> mount.id().number()).orElse(0L),
                    "title",
                            stored.map(mount -> "Mount " + mount.facts().name()).orElse("A new mount"),
                    "form", form);
        }
    }
}
