package dayglass.storage.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Problem;
import dayglass.inventory.picture.Picture;
import dayglass.inventory.picture.Pictures;
import dayglass.support.TestPictures;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures are kept byte for byte; their previews are upright, small and say nothing but what is seen. */
class PictureFolderTest {
    private static final Map<String, Color> COLOURS =
            Map.of("red", Color.RED, "green", Color.GREEN, "blue", Color.BLUE, "white", Color.WHITE);

    @TempDir
    Path folder;

    private PictureFolder pictures() {
        return PictureFolder.beside(folder.resolve("house.db"));
    }

    private Picture keep(byte[] bytes) {
        return pictures().keep(bytes).fold(picture -> picture, problem -> {
            throw new AssertionError(problem.detail());
        });
    }

    private BufferedImage preview(Picture picture, int width) throws IOException {
        return ImageIO.read(
                new ByteArrayInputStream(pictures().preview(picture, width).orElseThrow()));
    }

    private static String colourAt(BufferedImage image, double across, double down) {
        Color seen = new Color(image.getRGB((int) (image.getWidth() * across), (int) (image.getHeight() * down)));
        return COLOURS.entrySet().stream()
                .filter(each -> Math.abs(each.getValue().getRed() - seen.getRed()) < 70
                        && Math.abs(each.getValue().getGreen() - seen.getGreen()) < 70
                        && Math.abs(each.getValue().getBlue() - seen.getBlue()) < 70)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(seen.toString());
    }

    private static String quarters(BufferedImage image) {
        return String.join(
                " ",
                colourAt(image, .25, .25),
                colourAt(image, .75, .25),
                colourAt(image, .25, .75),
                colourAt(image, .75, .75));
    }

    @Test
    void itIsKeptByteForByteUnderItsHash() throws Exception {
        byte[] bytes = TestPictures.jpegWithExif(60, 40, 1);
        Picture picture = keep(bytes);
        Path file = folder.resolve("house.db.pictures")
                .resolve(picture.sha256().substring(0, 2))
                .resolve(picture.sha256() + ".jpg");
        assertArrayEquals(bytes, Files.readAllBytes(file));
        assertArrayEquals(bytes, pictures().original(picture).orElseThrow());
        assertEquals(picture, keep(bytes));
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(3, files.filter(Files::isRegularFile).count());
        }
    }

    /** Where each stored quarter is seen. Source: Exif 2.32, section 4.6.4, tag 274: what row 0 and column 0 are. */
    @ParameterizedTest
    @CsvSource({
        "1, red green blue white",
        "2, green red white blue",
        "3, white blue green red",
        "4, blue white red green",
        "5, red blue green white",
        "6, blue red white green",
        "7, white green blue red",
        "8, green white red blue"
    })
    void aPreviewIsUpright(int orientation, String seen) throws Exception {
        Picture picture = keep(TestPictures.jpegWithExif(200, 120, orientation));
        for (int width : Pictures.PREVIEW_WIDTHS) {
            BufferedImage preview = preview(picture, width);
            assertEquals(seen, quarters(preview));
            assertEquals(orientation < 5 ? 200 : 120, preview.getWidth());
            assertEquals(orientation < 5 ? 120 : 200, preview.getHeight());
            assertEquals(preview.getWidth(), picture.width());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png", "quarters-lossy", "quarters-lossless"})
    void everyKindHasPreviews(String kind) throws Exception {
        byte[] bytes = switch (kind) {
            case "jpeg" -> TestPictures.jpeg(64, 40);
            case "png" -> TestPictures.png(64, 40);
            default -> TestPictures.webp(kind);
        };
        BufferedImage preview = preview(keep(bytes), 480);
        assertEquals(64, preview.getWidth());
        assertEquals("red green blue white", quarters(preview));
    }

    @Test
    void aLargePictureIsMadeSmallAndKeepsItsShape() throws Exception {
        Picture picture = keep(TestPictures.jpeg(4000, 3000));
        for (int width : Pictures.PREVIEW_WIDTHS) {
            BufferedImage preview = preview(picture, width);
            assertEquals(width, preview.getWidth());
            assertEquals(width * 3 / 4, preview.getHeight());
            assertEquals("red green blue white", quarters(preview));
        }
    }

    @Test
    void noPlaceGoesIntoAPreview() {
        byte[] bytes = TestPictures.jpegWithExif(200, 120, 6);
        Picture picture = keep(bytes);
        assertTrue(new String(bytes, StandardCharsets.ISO_8859_1).contains("PLACE"));
        for (int width : Pictures.PREVIEW_WIDTHS) {
            String preview = new String(pictures().preview(picture, width).orElseThrow(), StandardCharsets.ISO_8859_1);
            assertFalse(preview.contains("PLACE"));
            assertFalse(preview.contains("Exif"));
        }
    }

    @Test
    void aPreviewThatIsGoneIsMadeAgain() throws Exception {
        Picture picture = keep(TestPictures.png(64, 40));
        byte[] before = pictures().preview(picture, 480).orElseThrow();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".preview.jpg"))
                    .toList()) {
                Files.delete(file);
            }
        }
        assertArrayEquals(before, pictures().preview(picture, 480).orElseThrow());
    }

    @Test
    void whatIsRefusedLeavesNothingBehind() throws Exception {
        List<byte[]> bad = List.of(
                TestPictures.pngThatClaims(50_000, 50_000), new byte[] {1, 2, 3}, TestPictures.pngThatClaims(9, 9));
        for (byte[] bytes : bad) {
            assertTrue(
                    !pictures().keep(bytes).fold(picture -> "", Problem::detail).isEmpty());
        }
        assertFalse(Files.exists(folder.resolve("house.db.pictures")));
    }
}
