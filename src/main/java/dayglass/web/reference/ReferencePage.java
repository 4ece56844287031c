package dayglass.web.reference;

import dayglass.wire.Json;
import dayglass.wire.JsonText;
import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** {@code /openapi.json} and {@code /reference}. */
public final class ReferencePage {
    private static final String RESOURCE = "/openapi/openapi.json";

    private ReferencePage() {}

    public static void addTo(RoutesConfig routes) {
        byte[] contract = contract();
        byte[] page = page(contract).getBytes(StandardCharsets.UTF_8);
        routes.get("/openapi.json", ctx -> ctx.contentType("application/json").result(contract));
        routes.get(
                "/reference",
                ctx -> ctx.contentType("text/html; charset=utf-8")
                        .header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'")
                        .result(page));
    }

    private static String page(byte[] contract) {
        Json.Obj document = JsonText.parse(contract).fold(json -> (Json.Obj) json, faults -> {
            throw new IllegalStateException(RESOURCE + " is no JSON: " + faults);
        });
        return new ReferenceHtml(document).page();
    }

    private static byte[] contract() {
        try (InputStream resource = ReferencePage.class.getResourceAsStream(RESOURCE)) {
            return Objects.requireNonNull(resource, RESOURCE + " is not packed").readAllBytes();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
