package dayglass.architecture.broken.job;

import io.javalin.http.Context;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class SpeaksHttp {
    static void answer(Context context) {
        context.status(204);
    }
}
