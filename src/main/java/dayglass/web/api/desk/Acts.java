package dayglass.web.api.desk;

import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.LongFunction;

/**
 * Lists and shows papers of one kind, and does something to one by the version that its caller saw.
 *
 * @param noun for messages: {@code rental}
 */
record Acts<I extends Id, T>(
        String path,
        String noun,
        VersionedCollection<I, T> all,
        LongFunction<I> idOf,
        Function<Stored<I, T>, Json.Obj> json) {

    void list(Context ctx) {
        Requests.onlyParameters(ctx, "limit", "after");
        Replies.Slice slice = Replies.Slice.of(ctx);
        List<Stored<I, T>> fetched = all.list(Optional.of(idOf.apply(slice.after())), slice.toFetch());
        Replies.json(ctx, slice.page(path, "", fetched, each -> each.id().number(), json::apply));
    }

    void read(Context ctx) {
        Requests.onlyParameters(ctx);
        show(ctx, find(ctx));
    }

    Stored<I, T> find(Context ctx) {
        return Requests.find(ctx, all, idOf, noun);
    }

    /** Reads the body, then does it to the version that If-Match names, and shows what came of it. */
    <B> void act(Context ctx, Reader<B> body, BiFunction<Stored<I, T>, B, Outcome<Stored<I, T>>> deed) {
        Requests.onlyParameters(ctx);
        Stored<I, T> current = find(ctx);
        B read = body(ctx, body, current);
        show(ctx, done(deed.apply(current, read), current.id()));
    }

    <B> B body(Context ctx, Reader<B> body, Stored<I, T> current) {
        IfMatch ifMatch = IfMatch.of(ctx);
        B read = Requests.body(ctx, body);
        if (!ifMatch.matches(current.version())) {
            throw stale(current);
        }
        return read;
    }

    void show(Context ctx, Stored<I, T> stored) {
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.json(ctx, json.apply(stored));
    }

    void created(Context ctx, Stored<I, T> stored) {
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.created(ctx, path + "/" + stored.id().number(), json.apply(stored));
    }

    private <R> R done(Outcome<R> outcome, I id) {
        return outcome.fold(value -> value, problem -> {
            throw problem.code() == Problem.Code.STALE ? stale(all.find(id).orElseThrow()) : Refusal.of(problem);
        });
    }

    private Refusal stale(Stored<I, T> current) {
        return IfMatch.stale("This " + noun + " is", current.version(), json.apply(current));
    }
}
