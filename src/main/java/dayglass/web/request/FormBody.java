package dayglass.web.request;

import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import io.javalin.http.Context;
import jakarta.servlet.http.Part;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a browser's form sends: text in UTF-8, whatever the form's encoding. */
public final class FormBody {
    private FormBody() {}

    /** The values of each field; refuses what did not arrive whole or is no UTF-8. */
    public static Map<String, List<String>> read(Context ctx) {
        try {
            if (ctx.isMultipartFormData()) {
                Map<String, List<String>> values = ctx.formParamMap();
                for (Part part : ctx.req().getParts()) {
                    requireText(part.getSubmittedFileName() != null || isText(part));
                }
                return values;
            }
            String named = Optional.ofNullable(ctx.req().getCharacterEncoding()).orElse("utf-8");
            requireText(named.equalsIgnoreCase("utf-8") && Utf8.isEncodedText(ctx.bodyAsBytes()));
            return ctx.formParamMap();
        } catch (RuntimeException refused) {
            throw refused;
        } catch (Exception broken) {
            // The server throws a checked exception at a multipart body that does not hold together.
            throw new Refusal(ProblemKind.MALFORMED, "The form did not arrive whole: send it again.");
        }
    }

    private static boolean isText(Part part) throws IOException {
        return Utf8.isText(part.getInputStream().readAllBytes());
    }

    private static void requireText(boolean isText) {
        if (!isText) {
            throw new Refusal(
                    ProblemKind.MALFORMED, "The form is not text in UTF-8, so nothing was stored: send it in UTF-8.");
        }
    }
}
