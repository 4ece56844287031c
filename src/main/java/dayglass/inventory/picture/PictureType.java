package dayglass.inventory.picture;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of pictures that are kept. */
public enum PictureType {
    JPEG("image/jpeg", "jpg"),
    PNG("image/png", "png"),
    WEBP("image/webp", "webp");

    private final String mediaType;
    private final String ending;

    PictureType(String mediaType, String ending) {
        this.mediaType = mediaType;
        this.ending = ending;
    }

    public String mediaType() {
        return mediaType;
    }

    /** Of its file's name, without the dot. */
    public String ending() {
        return ending;
    }

    public static Optional<PictureType> of(String mediaType) {
        return Arrays.stream(values())
                .filter(type -> type.mediaType.equals(mediaType))
                .findFirst();
    }
}
