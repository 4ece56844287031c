package dayglass.web.api.inventory.condition;

import dayglass.base.Stored;
import dayglass.house.Household;
import dayglass.inventory.Unit;
import dayglass.inventory.condition.Condition;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.Notebook;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** {@code /api/units/{id}/notes}: what was seen on a unit, and its condition now. */
public final class NoteApi {
    private static final String PATH = "/api/units/{id}/notes";

    private final Notebook notebook;
    private final Household household;

    public NoteApi(Notebook notebook, Household household) {
        this.notebook = notebook;
        this.household = household;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(PATH, this::list);
        routes.post(PATH, this::add);
        new PictureApi(notebook).addTo(routes);
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx, "limit", "after");
        Replies.Slice slice = Replies.Slice.of(ctx);
        Unit.Id unit = find(ctx);
        List<Stored<ConditionNote.Id, ConditionNote>> all = notebook.notes().of(unit);
        List<Stored<ConditionNote.Id, ConditionNote>> fetched = all.stream()
                .filter(note -> note.id().number() > slice.after())
                .limit(slice.toFetch())
                .toList();
        ZoneId zone = zone();
        Json.Members page = Json.object().put("condition", NoteJson.condition(Condition.now(all)));
        slice.page(ctx.path(), "", fetched, note -> note.id().number(), note -> NoteJson.show(note, all, zone))
                .members()
                .forEach(page::put);
        Replies.json(ctx, page.build());
    }

    private void add(Context ctx) {
        Requests.onlyParameters(ctx);
        Unit.Id unit = find(ctx);
        boolean hasParts = SentPictures.hasParts(ctx);
        NoteJson.Sent sent = hasParts ? part(ctx) : Requests.body(ctx, NoteJson.reader());
        Stored<ConditionNote.Id, ConditionNote> note = Refusal.require(notebook.noteCondition()
                .note(unit, sent.seen(), sent.resolves(), hasParts ? SentPictures.of(ctx) : List.of()));
        ctx.status(201);
        Replies.json(ctx, NoteJson.show(note, List.of(), zone()));
    }

    private static NoteJson.Sent part(Context ctx) {
        SentPictures.requireWhole(ctx);
        String note = Optional.ofNullable(ctx.formParam("note"))
                .orElseThrow(() ->
                        new Refusal(ProblemKind.MALFORMED, "The part note is missing: put the note there, as JSON."));
        return NoteJson.reader().read(note.getBytes(StandardCharsets.UTF_8)).fold(sent -> sent, faults -> {
            throw Refusal.faulty(faults);
        });
    }

    private Unit.Id find(Context ctx) {
        Unit.Id unit = new Unit.Id(Requests.pathId(ctx));
        if (notebook.units().find(unit).isEmpty()) {
            throw new Refusal(ProblemKind.NOT_FOUND, "There is no unit with the id " + unit.number() + ".");
        }
        return unit;
    }

    private ZoneId zone() {
        return household.settings().now().facts().zone();
    }
}
