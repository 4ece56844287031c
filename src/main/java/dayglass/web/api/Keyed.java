package dayglass.web.api;

import dayglass.base.Outcome;
import dayglass.house.KeyedAnswers;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Lets a request that creates something be sent twice: {@code routes.post(path, keyed.once(handler))}. One with the
 * header {@code Idempotency-Key} has one effect, and its first answer is given again byte for byte; without the header
 * the handler works as ever. The handler runs inside a transaction, so it must be quick.
 */
public final class Keyed {
    public static final String HEADER = "Idempotency-Key";

    /** Visible ASCII, which every client can send. */
    private static final Pattern KEY = Pattern.compile("[\\x21-\\x7E]{1,200}");

    private final KeyedAnswers answers;

    public Keyed(KeyedAnswers answers) {
        this.answers = answers;
    }

    public Handler once(Handler handler) {
        return ctx -> {
            Optional<String> key = Optional.ofNullable(ctx.header(HEADER));
            if (key.isEmpty()) {
                handler.handle(ctx);
            } else {
                answer(ctx, key.get(), handler);
            }
        };
    }

    private void answer(Context ctx, String key, Handler handler) {
        if (!KEY.matcher(key).matches()) {
            throw new Refusal(
                    ProblemKind.MALFORMED,
                    "The header " + HEADER + " must have 1 to 200 visible ASCII characters, such as a UUID.");
        }
        KeyedAnswers.Request request = new KeyedAnswers.Request(key, sha256(ctx));
        KeyedAnswers.Answer answer = Refusal.require(answers.once(request, () -> Outcome.done(worked(ctx, handler))));
        answer.headers().forEach(ctx::header);
        ctx.status(answer.status()).result(answer.body().getBytes(StandardCharsets.UTF_8));
    }

    /** What the handler answers; a refusal leaves it as an exception, which takes everything back. */
    private static KeyedAnswers.Answer worked(Context ctx, Handler handler) {
        try {
            handler.handle(ctx);
        } catch (RuntimeException refused) {
            throw refused;
        } catch (Exception failed) {
            throw new IllegalStateException("a handler failed", failed);
        }
        Map<String, String> headers = new TreeMap<>();
        ctx.res()
                .getHeaderNames()
                .forEach(name -> headers.put(name, String.valueOf(ctx.res().getHeader(name))));
        return new KeyedAnswers.Answer(
                ctx.statusCode(), headers, Optional.ofNullable(ctx.result()).orElse(""));
    }

    private static String sha256(Context ctx) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            String address = ctx.method().name() + " " + ctx.path() + "?"
                    + Optional.ofNullable(ctx.queryString()).orElse("") + "\n"
                    + Optional.ofNullable(ctx.header("Content-Type")).orElse("") + "\n";
            digest.update(address.getBytes(StandardCharsets.UTF_8));
            digest.update(Requests.bytes(ctx));
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
