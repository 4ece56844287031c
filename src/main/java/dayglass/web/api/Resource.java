package dayglass.web.api;

import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Creates, reads, changes, lists and removes one kind of thing. What is wrong is told in this order: the thing is not
 * there, no version is named, the body cannot be read, the version is stale, the facts do not fit the others.
 */
public final class Resource<I extends Id, T> {
    private final Representation<I, T> form;
    private final Optional<Lookup<I, T>> lookup;

    public Resource(Representation<I, T> form) {
        this.form = form;
        this.lookup = Optional.empty();
    }

    /** A resource whose list can be asked for the one thing that a name of its own belongs to. */
    public Resource(Representation<I, T> form, Lookup<I, T> lookup) {
        this.form = form;
        this.lookup = Optional.of(lookup);
    }

    /**
     * Finds one thing by what is its own.
     *
     * @param parameter of the query
     */
    public record Lookup<I extends Id, T>(String parameter, Function<String, Optional<Stored<I, T>>> find) {}

    public void addTo(RoutesConfig routes) {
        routes.post(form.path(), this::create);
        routes.get(form.path(), this::list);
        routes.get(form.path() + "/{id}", this::read);
        routes.put(form.path() + "/{id}", this::change);
        routes.delete(form.path() + "/{id}", this::remove);
    }

    private void create(Context ctx) {
        Requests.onlyParameters(ctx);
        created(ctx, form.all().add(Requests.body(ctx, form.reader())));
    }

    /** Answers that something new is there, or why not. */
    public void created(Context ctx, Outcome<Stored<I, T>> outcome) {
        Stored<I, T> stored = Refusal.require(outcome);
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.created(ctx, form.path() + "/" + stored.id().number(), show(stored));
    }

    private void list(Context ctx) {
        Optional<String> name = lookup.map(Lookup::parameter).filter(each -> ctx.queryParam(each) != null);
        if (name.isPresent()) {
            lookUp(ctx, name.get());
            return;
        }
        Requests.onlyParameters(
                ctx,
                Stream.concat(Stream.of("limit", "after"), lookup.stream().map(Lookup::parameter))
                        .toArray(String[]::new));
        Replies.Slice slice = Replies.Slice.of(ctx);
        List<Stored<I, T>> fetched = form.all().list(Optional.of(form.idOf().apply(slice.after())), slice.toFetch());
        Replies.json(
                ctx, slice.page(form.path(), "", fetched, stored -> stored.id().number(), this::show));
    }

    /** The list of those whose own it is: one or none. */
    private void lookUp(Context ctx, String parameter) {
        Requests.onlyParameters(ctx, parameter);
        if (ctx.queryParams(parameter).size() > 1) {
            throw Requests.badParameter(parameter, "it must be given once");
        }
        List<Json> found = lookup.orElseThrow()
                .find()
                .apply(String.valueOf(ctx.queryParam(parameter)))
                .map(stored -> List.<Json>of(show(stored)))
                .orElse(List.of());
        Replies.json(ctx, Json.object().put("items", Json.list(found)).build());
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        show(ctx, find(ctx));
    }

    private void change(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<I, T> current = find(ctx);
        IfMatch ifMatch = IfMatch.of(ctx);
        T facts = Requests.body(ctx, form.reader());
        requireMatch(ifMatch, current);
        Outcome<Stored<I, T>> outcome = form.all().change(new Stored<>(current.id(), current.version(), facts));
        show(ctx, done(outcome, current.id()));
    }

    private void remove(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<I, T> current = find(ctx);
        requireMatch(IfMatch.of(ctx), current);
        done(form.all().remove(current.id(), current.version()), current.id());
        ctx.status(204);
    }

    /** The thing that the address names. */
    public Stored<I, T> find(Context ctx) {
        return Requests.find(ctx, form.all(), form.idOf(), form.noun());
    }

    private void requireMatch(IfMatch ifMatch, Stored<I, T> current) {
        if (!ifMatch.matches(current.version())) {
            throw stale(current);
        }
    }

    private Refusal stale(Stored<I, T> current) {
        return IfMatch.stale("This " + form.noun() + " is", current.version(), show(current));
    }

    /** As above, but one who came too late is shown what is there now. */
    private <R> R done(Outcome<R> outcome, I id) {
        return outcome.fold(value -> value, problem -> {
            if (problem.code() == Problem.Code.STALE) {
                throw form.all().find(id).map(this::stale).orElseGet(() -> Requests.notFound(form.noun(), id));
            }
            throw Refusal.of(problem);
        });
    }

    private void show(Context ctx, Stored<I, T> stored) {
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.json(ctx, show(stored));
    }

    private Json.Obj show(Stored<I, T> stored) {
        Json.Members members = Json.object().put("id", stored.id().number()).put("version", stored.version());
        form.writer().accept(members, stored.facts());
        return members.build();
    }
}
