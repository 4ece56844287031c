package dayglass.web.api.inventory.condition;

import dayglass.inventory.condition.Notebook;
import dayglass.inventory.picture.Picture;
import dayglass.inventory.picture.PictureType;
import dayglass.inventory.picture.Pictures;
import dayglass.web.api.Requests;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.OptionalLong;

/** {@code /api/pictures/{sha}}: a picture as it was sent, or its preview. */
public final class PictureApi {
    private static final String PATH = "/api/pictures/";

    private final Notebook notebook;

    PictureApi(Notebook notebook) {
        this.notebook = notebook;
    }

    /** Where a picture is to be had. */
    public static String address(Picture picture) {
        return PATH + picture.sha256();
    }

    void addTo(RoutesConfig routes) {
        routes.get(PATH + "{sha}", this::send);
    }

    private void send(Context ctx) {
        Requests.onlyParameters(ctx, "width");
        OptionalLong width = Requests.number(ctx, "width", Integer.MAX_VALUE);
        if (width.isPresent() && !Pictures.PREVIEW_WIDTHS.contains((int) width.getAsLong())) {
            throw Requests.badParameter("width", "it must be one of " + Pictures.PREVIEW_WIDTHS);
        }
        Picture picture = notebook.notes().picture(ctx.pathParam("sha")).orElseThrow(PictureApi::missing);
        Optional<byte[]> bytes = width.isPresent()
                ? notebook.pictures().preview(picture, (int) width.getAsLong())
                : notebook.pictures().original(picture);
        // The address names the content, so that what was fetched once holds for ever.
        ctx.header("X-Content-Type-Options", "nosniff")
                .header("Content-Security-Policy", "default-src 'none'")
                .header("Cache-Control", "private, max-age=31536000, immutable")
                .contentType(
                        width.isPresent()
                                ? PictureType.JPEG.mediaType()
                                : picture.type().mediaType())
                .result(bytes.orElseThrow(PictureApi::missing));
    }

    private static Refusal missing() {
        return new Refusal(ProblemKind.NOT_FOUND, "There is no such picture.");
    }
}
