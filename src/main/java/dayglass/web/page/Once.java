package dayglass.web.page;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.house.KeyedAnswers;
import dayglass.web.page.form.Form;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Does what a form asks for once, however often it is sent: a page carries a key of its own ({@code part/once.jte}). A
 * refusal keeps no key, so the mended form may be sent again.
 */
public record Once(KeyedAnswers answers) {
    /**
     * Does it, or goes where it led when it was done.
     *
     * @param act gives the address of the page to go on to
     * @param refused shows the form with what is wrong
     */
    public void act(Context ctx, Form form, Supplier<Outcome<String>> act, Consumer<Problem> refused) {
        Outcome<String> outcome = form.has("once")
                ? answers.once(
                                new KeyedAnswers.Request("form " + form.value("once"), said(ctx, form)),
                                () -> act.get().map(address -> new KeyedAnswers.Answer(303, Map.of(), address)))
                        .map(KeyedAnswers.Answer::body)
                : act.get();
        outcome.fold(
                address -> {
                    Requests.see(ctx, address);
                    return true;
                },
                problem -> {
                    refused.accept(problem);
                    return false;
                });
    }

    private static String said(Context ctx, Form form) {
        try {
            byte[] all = (ctx.path() + "\n" + form.values()).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(all));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
