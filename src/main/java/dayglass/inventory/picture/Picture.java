package dayglass.inventory.picture;

/**
 * A picture that is kept.
 *
 * @param sha256 of its bytes, 64 hexadecimal digits; its name
 * @param width in pixels, as it is seen upright
 * @param height in pixels, as it is seen upright
 */
public record Picture(String sha256, PictureType type, int width, int height) {}
