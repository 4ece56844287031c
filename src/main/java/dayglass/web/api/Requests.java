package dayglass.web.api;

import dayglass.base.Id;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.paper.PaperSize;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.web.request.PaperAsked;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.JsonText;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.http.Context;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpException;

/** Reads addresses, queries and bodies, and refuses what cannot be read. */
public final class Requests {
    private static final Pattern JSON_TYPE =
            Pattern.compile("application/json[ \t]*(?:;[ \t]*charset[ \t]*=[ \t]*\"?utf-8\"?[ \t]*)?;?[ \t]*");

    /** Where a request keeps its body once it was read. */
    private static final String BODY = "dayglass.body";

    private Requests() {}

    /** The number in the address; anything that is no number from 1 on names nothing that exists. */
    public static long pathId(Context ctx) {
        return PathNumbers.in(ctx, "id")
                .orElseThrow(() -> new Refusal(
                        ProblemKind.NOT_FOUND, "Ids are whole numbers from 1 on, and this address has another."));
    }

    /**
     * The thing that the number in the address names.
     *
     * @param noun for the refusal where there is none: {@code job}
     */
    public static <I extends Id, T> Stored<I, T> find(
            Context ctx, VersionedCollection<I, T> all, LongFunction<I> idOf, String noun) {
        I id = idOf.apply(pathId(ctx));
        return all.find(id).orElseThrow(() -> notFound(noun, id));
    }

    static Refusal notFound(String noun, Id id) {
        return new Refusal(ProblemKind.NOT_FOUND, "There is no " + noun + " with the id " + id.number() + ".");
    }

    /** The body as JSON, at most {@link JsonText#MOST_BYTES} of it whatever the headers say. */
    public static <T> T body(Context ctx, Reader<T> reader) {
        requireJson(ctx);
        return read(bytes(ctx), reader);
    }

    /** For addresses that take no facts: refuses a body that says more than an empty object. */
    public static void noFacts(Context ctx) {
        byte[] bytes = bytes(ctx);
        if (bytes.length > 0) {
            requireJson(ctx);
            read(bytes, Fields.object(fields -> fields.build(() -> true)));
        }
    }

    private static <T> T read(byte[] bytes, Reader<T> reader) {
        return reader.read(bytes).fold(value -> value, faults -> {
            throw Refusal.faulty(faults);
        });
    }

    private static void requireJson(Context ctx) {
        String type = Optional.ofNullable(ctx.header("Content-Type")).orElse("");
        Matcher json = JSON_TYPE.matcher(type.toLowerCase(Locale.ROOT));
        if (!json.matches()) {
            throw new Refusal(
                            ProblemKind.UNSUPPORTED_MEDIA_TYPE,
                            "Send JSON in UTF-8 with the header Content-Type: application/json.")
                    .withHeader("Accept-Post", "application/json");
        }
        String encoding = Optional.ofNullable(ctx.header("Content-Encoding")).orElse("identity");
        if (!encoding.equalsIgnoreCase("identity")) {
            throw new Refusal(ProblemKind.UNSUPPORTED_MEDIA_TYPE, "Send the body without a Content-Encoding.")
                    .withHeader("Accept-Encoding", "identity");
        }
    }

    /** The bytes of the body, which may be asked for more than once. */
    static byte[] bytes(Context ctx) {
        byte[] read = ctx.attribute(BODY);
        if (read == null) {
            read = readBytes(ctx);
            ctx.attribute(BODY, read);
        }
        return read;
    }

    private static byte[] readBytes(Context ctx) {
        if (ctx.req().getContentLengthLong() > JsonText.MOST_BYTES) {
            throw tooLarge();
        }
        try {
            byte[] bytes = ctx.req().getInputStream().readNBytes(JsonText.MOST_BYTES + 1);
            if (bytes.length > JsonText.MOST_BYTES) {
                throw tooLarge();
            }
            return bytes;
        } catch (IOException | HttpException.RuntimeException broken) {
            throw new Refusal(
                            ProblemKind.MALFORMED,
                            "The body broke off or its chunks cannot be read: send it again, whole.")
                    .withHeader("Connection", "close");
        }
    }

    /** The rest of the body is not read, so the connection cannot go on. */
    private static Refusal tooLarge() {
        return new Refusal(ProblemKind.TOO_LARGE, JsonText.tooLong()).withHeader("Connection", "close");
    }

    /** Refuses parameters that would be ignored. */
    public static void onlyParameters(Context ctx, String... known) {
        for (String name : ctx.queryParamMap().keySet()) {
            if (!List.of(known).contains(name)) {
                throw badParameter(
                        name,
                        known.length == 0
                                ? "no parameters are known here"
                                : "it is not known here; known are " + String.join(", ", known));
            }
        }
    }

    /** A whole number from 1 to {@code most} in the query. */
    public static OptionalLong number(Context ctx, String name, long most) {
        List<String> values = ctx.queryParams(name);
        if (values.isEmpty()) {
            return OptionalLong.empty();
        }
        OptionalLong number = PathNumbers.of(values.get(0));
        if (values.size() > 1 || number.isEmpty() || number.getAsLong() > most) {
            throw badParameter(name, "it must be given once, as a whole number from 1 to " + most);
        }
        return number;
    }

    /** A day in the query, such as {@code 2027-04-05}. */
    public static Optional<LocalDate> day(Context ctx, String name) {
        List<String> values = ctx.queryParams(name);
        if (values.size() > 1) {
            throw badParameter(name, "it must be given once");
        }
        return values.stream()
                .findFirst()
                .map(text -> Readers.date().readAll(Json.text(text)).fold(day -> day, faults -> {
                    throw badParameter(name, "it " + faults.get(0).message());
                }));
    }

    /** The paper asked for, where nothing else may be. */
    public static PaperSize paper(Context ctx) {
        onlyParameters(ctx, PaperAsked.PARAMETER);
        return PaperAsked.of(ctx);
    }

    public static Refusal badParameter(String name, String what) {
        return new Refusal(ProblemKind.MALFORMED, "The parameter " + name + " cannot be used: " + what + ".");
    }
}
