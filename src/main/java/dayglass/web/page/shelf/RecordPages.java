package dayglass.web.page.shelf;

import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.web.error.Refusal;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;

/** One kind of record: a form that adds one, the page of one that changes it, and its removal. */
public abstract class RecordPages<I extends Id, T> {
    private final Html html;
    private final Kind<I, T> kind;

    protected RecordPages(Html html, Kind<I, T> kind) {
        this.html = html;
        this.kind = kind;
    }

    /**
     * What is kept.
     *
     * @param path of its pages; {@code new} below it adds one
     * @param list the page to which one goes back
     * @param room where it stands among the rooms
     * @param reader of the JSON that its form stands for
     */
    public record Kind<I extends Id, T>(
            String path,
            String list,
            String room,
            VersionedCollection<I, T> all,
            LongFunction<I> idOf,
            Reader<T> reader) {}

    protected abstract String template();

    /** How it is named on the page that asks whether to remove it: {@code the unit Q-101}. */
    protected abstract String name(T facts);

    /** The JSON that the form stands for. */
    protected Json json(Form form) {
        return FormJson.read(form);
    }

    protected abstract Form form(T facts);

    /** What the page shows beside the form; empty for one that is not there yet. */
    protected abstract Map<String, Object> model(Optional<Stored<I, T>> stored, Form form);

    public void route(RoutesConfig routes) {
        routes.get(kind.path() + "/new", ctx -> html.render(ctx, template(), model(Optional.empty(), blank(ctx))));
        routes.post(kind.path() + "/new", this::add);
        routes.get(form(), this::show);
        routes.post(form(), this::change);
        routes.get(kind.path() + "/{id}/remove", this::askToRemove);
        routes.post(kind.path() + "/{id}/remove", this::remove);
    }

    /** Where the form of one stands; it may be another address than the page of the record. */
    protected String form() {
        return kind.path() + "/{id}";
    }

    /** Where one goes after a change. */
    protected String after(I changed) {
        return kind.list();
    }

    /** The form as it was sent, put in order so that pointers into its JSON are names of its fields. */
    protected Form ordered(Form sent) {
        return sent;
    }

    /** The form for a new one, with what its address says already. */
    protected Form blank(Context ctx) {
        return Form.EMPTY;
    }

    private Outcome<T> read(Form form) {
        return kind.reader().readAt("", json(form), Listener.PERSON).outcome();
    }

    private void add(Context ctx) {
        Form form = ordered(Requests.form(ctx));
        finish(ctx, Optional.empty(), form, read(form).then(kind.all()::add));
    }

    private Stored<I, T> find(Context ctx) {
        return Requests.find(ctx, kind.all(), kind.idOf());
    }

    private void show(Context ctx) {
        Stored<I, T> stored = find(ctx);
        Form form = form(stored.facts()).with("version", String.valueOf(stored.version()));
        html.render(ctx, template(), model(Optional.of(stored), form));
    }

    private void change(Context ctx) {
        Stored<I, T> stored = find(ctx);
        Form form = ordered(Requests.form(ctx));
        finish(
                ctx,
                Optional.of(stored),
                form,
                read(form).then(facts -> kind.all().change(new Stored<>(stored.id(), Requests.version(form), facts))));
    }

    private void finish(Context ctx, Optional<Stored<I, T>> stored, Form form, Outcome<Stored<I, T>> outcome) {
        outcome.fold(
                kept -> {
                    Requests.see(ctx, stored.map(Stored::id).map(this::after).orElse(kind.list()));
                    return kept;
                },
                problem -> {
                    html.renderFaulty(ctx, template(), model(stored, form.with(problem)));
                    return problem;
                });
    }

    private void askToRemove(Context ctx) {
        Stored<I, T> stored = find(ctx);
        String page = kind.path() + "/" + stored.id().number();
        html.render(
                ctx,
                "remove.jte",
                Map.of(
                        "what",
                        name(stored.facts()),
                        "action",
                        page + "/remove",
                        "back",
                        page,
                        "version",
                        stored.version(),
                        "place",
                        kind.room()));
    }

    private void remove(Context ctx) {
        I id = kind.idOf().apply(Requests.number(ctx, "id"));
        Refusal.require(kind.all().remove(id, Requests.version(Requests.form(ctx))));
        Requests.see(ctx, kind.list());
    }
}
