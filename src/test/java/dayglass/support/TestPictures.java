package dayglass.support;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Small pictures: red and green above blue and white, as they are seen upright when stored upright. */
public final class TestPictures {
    private TestPictures() {}

    public static BufferedImage quarters(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
        for (int quarter = 0; quarter < colours.length; quarter++) {
            graphics.setColor(colours[quarter]);
            graphics.fillRect(quarter % 2 * (width / 2), quarter / 2 * (height / 2), width / 2, height / 2);
        }
        graphics.dispose();
        return image;
    }

    public static byte[] jpeg(int width, int height) {
        return written("jpeg", width, height);
    }

    public static byte[] png(int width, int height) {
        return written("png", width, height);
    }

    private static byte[] written(String format, int width, int height) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(quarters(width, height), format, bytes);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        return bytes.toByteArray();
    }

    /** A WebP that a browser's canvas wrote, 64 x 40. */
    public static byte[] webp(String name) {
        try {
            return Files.readAllBytes(Path.of("src/test/resources/dayglass/inventory/picture", name + ".webp"));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /** A JPEG with Exif facts: how it is to be turned, and a place that nobody else is to know. */
    public static byte[] jpegWithExif(int width, int height, int orientation) {
        byte[] place = "PLACE 48.8584N 2.2945E".getBytes(StandardCharsets.US_ASCII);
        ByteBuffer tiff = ByteBuffer.allocate(26 + place.length);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 1)
                .putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0)
                .putInt(0)
                .put(place);
        byte[] exif = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
        byte[] plain = jpeg(width, height);
        ByteBuffer whole = ByteBuffer.allocate(plain.length + 4 + exif.length + tiff.capacity());
        whole.put(plain, 0, 2)
                .putShort((short) 0xFFE1)
                .putShort((short) (2 + exif.length + tiff.capacity()))
                .put(exif)
                .put(tiff.array())
                .put(plain, 2, plain.length - 2);
        return whole.array();
    }

    /** A PNG of few bytes whose header claims a size. */
    public static byte[] pngThatClaims(int width, int height) {
        byte[] png = png(2, 2);
        ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
        return png;
    }
}
