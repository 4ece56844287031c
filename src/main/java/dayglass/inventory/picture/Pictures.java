package dayglass.inventory.picture;

import dayglass.base.Outcome;
import java.util.List;
import java.util.Optional;

/** The bytes of the pictures. What is kept is never changed. */
public interface Pictures {
    /** The widths of previews, in pixels; a narrower picture's preview is as wide as itself. */
    List<Integer> PREVIEW_WIDTHS = List.of(480, 1600);

    /** Keeps a picture; refused where it is none of the kinds known, too large, broken or cut off. */
    Outcome<Picture> keep(byte[] bytes);

    /** As it was sent; empty where its file is gone. */
    Optional<byte[]> original(Picture picture);

    /**
     * Upright, as JPEG, without anything that was written beside the picture: no place, no device.
     *
     * @param width one of {@link #PREVIEW_WIDTHS}
     */
    Optional<byte[]> preview(Picture picture, int width);
}
