package dayglass.storage.picture;

import dayglass.inventory.picture.PictureHeader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A picture decoded, turned upright and made smaller: pixels alone, so that nothing written beside them comes along. */
final class Preview {
    private static final float QUALITY = 0.85f;

    private Preview() {}

    /**
     * Decodes a picture at about twice the width wanted, as no more of it is seen.
     *
     * @return upright, at most so wide; empty where it cannot be decoded
     */
    static Optional<BufferedImage> of(byte[] bytes, PictureHeader header, int mostWidth) {
        Iterator<ImageReader> readers =
                ImageIO.getImageReadersByMIMEType(header.type().mediaType());
        if (!readers.hasNext()) {
            throw new IllegalStateException("nothing here reads " + header.type());
        }
        ImageReader reader = readers.next();
        try (MemoryCacheImageInputStream input = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(input, true, true);
            ImageReadParam param = reader.getDefaultReadParam();
            int step = Math.max(1, header.uprightWidth() / (2 * mostWidth));
            param.setSourceSubsampling(step, step, 0, 0);
            return Optional.of(upright(reader.read(0, param), header, mostWidth));
        } catch (IOException | RuntimeException undecodable) {
            // Decoders meet broken data with whatever exception is at hand.
            return Optional.empty();
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage upright(BufferedImage read, PictureHeader header, int mostWidth) {
        int width = Math.min(mostWidth, header.uprightWidth());
        int height = Math.max(1, Math.round((float) header.uprightHeight() * width / header.uprightWidth()));
        AffineTransform turn = turn(header.orientation(), read.getWidth(), read.getHeight());
        double turnedWidth = header.onItsSide() ? read.getHeight() : read.getWidth();
        double turnedHeight = header.onItsSide() ? read.getWidth() : read.getHeight();
        AffineTransform whole = AffineTransform.getScaleInstance(width / turnedWidth, height / turnedHeight);
        whole.concatenate(turn);
        return drawn(read, whole, width, height);
    }

    /** At most so wide. */
    static BufferedImage smaller(BufferedImage image, int mostWidth) {
        int width = Math.min(mostWidth, image.getWidth());
        int height = Math.max(1, Math.round((float) image.getHeight() * width / image.getWidth()));
        return drawn(
                image,
                AffineTransform.getScaleInstance(
                        (double) width / image.getWidth(), (double) height / image.getHeight()),
                width,
                height);
    }

    private static BufferedImage drawn(BufferedImage image, AffineTransform transform, int width, int height) {
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = drawn.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(image, transform, null);
        graphics.dispose();
        return drawn;
    }

    /** From where a pixel is stored to where it is seen. Source: Exif 2.32, section 4.6.4, tag 274. */
    private static AffineTransform turn(int orientation, double width, double height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    static byte[] jpeg(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (MemoryCacheImageOutputStream output = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(output);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
