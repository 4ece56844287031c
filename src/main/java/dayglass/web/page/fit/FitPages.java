package dayglass.web.page.fit;

import dayglass.base.Stored;
import dayglass.catalogue.Camera;
import dayglass.catalogue.Glass;
import dayglass.catalogue.LensModel;
import dayglass.optics.FitQuestion;
import dayglass.optics.Formats;
import dayglass.optics.Mounts;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.wire.Listener;
import dayglass.wire.fit.FitRequestReader;
import dayglass.wire.fit.FitRequestReader.Asked;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page that judges a lens on a camera. All that is asked stands in its address. */
public final class FitPages {
    private static final String TYPED = "typed";
    private static final Pattern NUMBERED = Pattern.compile("(?:model|camera) ([1-9][0-9]{0,17})");

    private final FitSources sources;
    private final Html html;

    public FitPages(FitSources sources, Html html) {
        this.sources = sources;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get("/fit", this::show);
    }

    /** What one question comes to on the page. */
    private record Judged(Form form, Optional<FitView> view, List<ModelRow> models, String camera) {}

    private void show(Context ctx) {
        boolean asked = !ctx.queryParamMap().isEmpty();
        Mounts mounts = sources.mounts().all();
        Judged judged = asked
                ? judge(Form.sent(ctx.queryParamMap()), mounts)
                : new Judged(FitForm.usual(), Optional.empty(), List.of(), "");
        Map<String, Object> model = new HashMap<>(Map.of(
                "form", judged.form(),
                "asked", asked,
                "models", judged.models(),
                "camera", judged.camera(),
                "lenses", lenses(),
                "fronts", fronts(),
                "cameras", cameras(),
                "formats", formats(),
                "mounts", List.copyOf(mounts.byName().keySet())));
        judged.view().ifPresent(view -> model.put("view", view));
        if (judged.form().faulty()) {
            html.renderFaulty(ctx, "fit.jte", model);
        } else {
            html.render(ctx, "fit.jte", model);
        }
    }

    private Judged judge(Form form, Mounts mounts) {
        Optional<Camera> camera = chosen(form.value("camera"))
                .flatMap(id -> sources.cameras().find(new Camera.Id(id)))
                .map(Stored::facts);
        boolean typedLens = form.value("lens").equals(TYPED);
        boolean typedFront = form.value("front").equals(TYPED);
        return FitRequestReader.asked(mounts)
                .readAt("", FitForm.json(form, camera, typedLens, typedFront), Listener.PERSON)
                .fold(
                        asked -> judged(form, asked),
                        faults -> new Judged(form.with(faults), Optional.empty(), List.of(), ""));
    }

    private Judged judged(Form form, Asked asked) {
        FitQuestion.Setting setting = asked.setting();
        List<ModelRow> models = Requests.all(sources.models()).stream()
                .filter(model -> ModelRow.isLens(model.facts()))
                .map(model -> ModelRow.of(model, setting))
                .sorted(ModelRow.BEST_FIRST)
                .toList();
        String camera = FitForm.words(setting.camera());
        Optional<LensModel> lens = model(form.value("lens"));
        Optional<LensModel> front = model(form.value("front"));
        List<String> lacks =
                lens.map(each -> new Glass(each, front).lacks(setting.mounts())).orElse(List.of());
        if (!lacks.isEmpty()) {
            return new Judged(refused(form, String.join("; ", lacks) + "."), Optional.empty(), models, camera);
        }
        Optional<FitQuestion.Lens> glass = asked.lens()
                .or(() -> lens.flatMap(each -> new Glass(each, Optional.empty()).on(setting))
                        .map(FitQuestion::lens));
        Optional<FitQuestion.Attachment> attachment =
                asked.attachment().or(() -> front.map(each -> Glass.attachmentOf(each.record())));
        String name = lens.map(each -> new Glass(each, front).name())
                .orElseGet(() -> "the typed lens"
                        + front.map(each -> " behind " + each.fullName()).orElse(""));
        return new Judged(form, glass.map(each -> FitView.of(name, setting.of(each, attachment))), models, camera);
    }

    private static Form refused(Form form, String words) {
        return new Form(form.values(), List.of(), words);
    }

    private static Optional<Long> chosen(String value) {
        Matcher number = NUMBERED.matcher(value);
        return number.matches() ? Optional.of(Long.valueOf(number.group(1))) : Optional.empty();
    }

    private Optional<LensModel> model(String value) {
        return chosen(value)
                .flatMap(id -> sources.models().find(new LensModel.Id(id)))
                .map(Stored::facts);
    }

    private List<Choice> lenses() {
        List<Choice> choices =
                new ArrayList<>(List.of(new Choice("", "none yet: all models"), new Choice(TYPED, "typed below")));
        choices.addAll(models(ModelRow::isLens));
        return choices;
    }

    private List<Choice> fronts() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "nothing"), new Choice(TYPED, "typed below")));
        choices.addAll(models(model -> model.kind() == LensModel.Kind.FRONT_ATTACHMENT));
        return choices;
    }

    private List<Choice> models(Predicate<LensModel> wanted) {
        return Requests.all(sources.models()).stream()
                .filter(model -> wanted.test(model.facts()))
                .map(model ->
                        new Choice("model " + model.id().number(), model.facts().fullName()))
                .sorted(Comparator.comparing(Choice::label))
                .toList();
    }

    private List<Choice> cameras() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "a format, or typed")));
        Requests.all(sources.cameras())
                .forEach(camera -> choices.add(new Choice(
                        "camera " + camera.id().number(),
                        camera.facts().name() + ", " + camera.facts().mode())));
        return choices;
    }

    private static List<Choice> formats() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "typed below")));
        Formats.FORMATS.forEach(format -> choices.add(new Choice(
                format.name(),
                format.name() + ", " + format.widthMm().toPlainString() + " × "
                        + format.heightMm().toPlainString() + " mm")));
        return choices;
    }
}
