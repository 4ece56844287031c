package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.LensModels;
import dayglass.shelf.LensModelJson;
import dayglass.web.page.Html;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One lens model with all its facts. */
final class ModelPages extends RecordPages<LensModel.Id, LensModel> {
    private static final List<Choice> KINDS = Stream.of(LensModel.Kind.values())
            .map(kind -> new Choice(kind.word(), kind.word()))
            .toList();

    ModelPages(LensModels models, Html html) {
        super(
                html,
                new Kind<>(
                        "/shelf/models", "/shelf/models", "shelf", models, LensModel.Id::new, LensModelJson.reader()));
    }

    @Override
    protected String template() {
        return "model.jte";
    }

    @Override
    protected String name(LensModel facts) {
        return "the model " + facts.fullName();
    }

    @Override
    protected Form form(LensModel facts) {
        return FormJson.form(LensModelJson.write(facts));
    }

    @Override
    protected Map<String, Object> model(Optional<Stored<LensModel.Id, LensModel>> stored, Form form) {
        return Map.of(
                "id",
                stored.map(model -> model.id().number()).orElse(0L),
                "title",
                stored.map(model -> model.facts().fullName()).orElse("A new model"),
                "kinds",
                KINDS,
                "form",
                form);
    }
}
