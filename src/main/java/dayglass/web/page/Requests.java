package dayglass.web.page;

import dayglass.base.Fault;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.web.error.Refusal;
import dayglass.web.page.form.Form;
import dayglass.web.request.FormBody;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** What the pages read from requests alike. */
public final class Requests {
    private static final int PAGE = 200;

    private Requests() {}

    /** The thing that the address names, or the page that says there is none. */
    public static <I extends dayglass.base.Id, T> Stored<I, T> find(
            Context ctx, VersionedCollection<I, T> all, LongFunction<I> id) {
        return all.find(id.apply(number(ctx, "id"))).orElseThrow(() -> missing(ctx));
    }

    /** A whole number in the address. */
    public static long number(Context ctx, String name) {
        return PathNumbers.in(ctx, name).orElseThrow(() -> missing(ctx));
    }

    public static Refusal missing(Context ctx) {
        return Refusal.of(new Problem(
                Problem.Code.NOT_FOUND, "There is nothing at " + ctx.path() + "; it may have been removed."));
    }

    public static Form form(Context ctx) {
        return Form.sent(FormBody.read(ctx));
    }

    /** A field's value as the wire format reads it; what is wrong with it is told at the field. */
    public static <T> Optional<T> read(Form form, String field, Reader<T> reader, List<Fault> faults) {
        if (!form.has(field)) {
            faults.add(new Fault(field, "fill this in"));
            return Optional.empty();
        }
        return reader.readAt(field, Json.text(form.value(field).strip()), Listener.PERSON)
                .fold(Optional::of, found -> {
                    faults.addAll(found);
                    return Optional.empty();
                });
    }

    /** The version on which a form was based; 0, which is always stale, where it says none. */
    public static long version(Form form) {
        return PathNumbers.of(form.value("version")).orElse(0);
    }

    /** Goes on to another page, which is always fetched with GET. */
    public static void see(Context ctx, String address) {
        ctx.redirect(address, HttpStatus.SEE_OTHER);
    }

    /** The bytes of the file that came with a form, or where none came, of what was typed into a field. */
    public static byte[] fileOrText(Context ctx, Form form, String file, String text) {
        UploadedFile uploaded = ctx.uploadedFile(file);
        if (uploaded == null || uploaded.size() == 0) {
            return form.value(text).getBytes(StandardCharsets.UTF_8);
        }
        try (InputStream content = uploaded.content()) {
            return content.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the uploaded file could not be read", e);
        }
    }

    /** Everything in a collection, by id. */
    public static <I extends dayglass.base.Id, T> List<Stored<I, T>> all(VersionedCollection<I, T> collection) {
        List<Stored<I, T>> all = new ArrayList<>();
        Optional<I> after = Optional.empty();
        List<Stored<I, T>> page;
        do {
            page = collection.list(after, PAGE);
            all.addAll(page);
            after = page.isEmpty()
                    ? after
                    : Optional.of(page.get(page.size() - 1).id());
        } while (page.size() == PAGE);
        return all;
    }
}
