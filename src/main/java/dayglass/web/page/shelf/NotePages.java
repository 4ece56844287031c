package dayglass.web.page.shelf;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.Household;
import dayglass.inventory.Unit;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.Notebook;
import dayglass.web.api.inventory.condition.NoteJson;
import dayglass.web.api.inventory.condition.SentPictures;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The notes of a unit: its condition now, every note with its pictures, and the form that adds one. */
public final class NotePages {
    private static final String PAGE = "/shelf/units/{id}/notes";
    private static final Pattern ID = Pattern.compile("[1-9][0-9]{0,17}");
    private static final Pattern GRADE = Pattern.compile("[0-9]");

    private final Notebook notebook;
    private final Household household;
    private final Html html;

    public NotePages(Notebook notebook, Household household, Html html) {
        this.notebook = notebook;
        this.household = household;
        this.html = html;
    }

    public void route(RoutesConfig routes) {
        routes.get(PAGE, ctx -> html.render(ctx, "notes.jte", model(find(ctx), Form.EMPTY)));
        routes.post(PAGE, this::add);
    }

    private Unit.Id find(Context ctx) {
        Unit.Id unit = new Unit.Id(Requests.number(ctx, "id"));
        if (notebook.units().find(unit).isEmpty()) {
            throw Requests.missing(ctx);
        }
        return unit;
    }

    private Map<String, Object> model(Unit.Id unit, Form form) {
        return Map.of(
                "tag",
                notebook.units().find(unit).map(found -> found.facts().tag()).orElse(""),
                "view",
                NotesView.of(unit, notebook.notes().of(unit), household),
                "form",
                form);
    }

    private void add(Context ctx) {
        Unit.Id unit = find(ctx);
        if (SentPictures.hasParts(ctx)) {
            SentPictures.requireWhole(ctx);
        }
        Form form = Requests.form(ctx);
        List<String> resolves = ctx.formParams("resolves");
        for (String id : resolves) {
            form = form.with("resolves " + id, "yes");
        }
        answer(ctx, unit, form, noted(ctx, unit, json(form, resolves)));
    }

    private Outcome<Stored<ConditionNote.Id, ConditionNote>> noted(Context ctx, Unit.Id unit, Json json) {
        return NoteJson.reader()
                .readAll(json)
                .fold(
                        sent -> notebook.noteCondition()
                                .note(
                                        unit,
                                        sent.seen(),
                                        sent.resolves(),
                                        SentPictures.hasParts(ctx) ? SentPictures.of(ctx) : List.of()),
                        faults -> Outcome.refused(Problem.faulty(faults)));
    }

    private void answer(
            Context ctx, Unit.Id unit, Form form, Outcome<Stored<ConditionNote.Id, ConditionNote>> outcome) {
        Optional<Form> again = outcome.fold(note -> Optional.empty(), problem -> Optional.of(form.with(problem)));
        again.ifPresentOrElse(
                faulty -> html.renderFaulty(ctx, "notes.jte", model(unit, faulty)),
                () -> ctx.redirect("/shelf/units/" + unit.number() + "/notes", HttpStatus.SEE_OTHER));
    }

    private static Json json(Form form, List<String> resolves) {
        String grade = form.value("/severity");
        return Json.object()
                .put("part", form.value("/part"))
                .put("finding", form.value("/finding").strip())
                .put("severity", GRADE.matcher(grade).matches() ? new Json.Num(grade) : Json.text(grade))
                .put("quarantine", form.has("/quarantine"))
                .put("words", form.value("/words").strip())
                .put(
                        "resolves",
                        Json.list(resolves.stream()
                                .map(id -> ID.matcher(id).matches() ? new Json.Num(id) : Json.text(id))
                                .toList()))
                .build();
    }
}
