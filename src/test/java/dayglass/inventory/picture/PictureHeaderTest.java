package dayglass.inventory.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.support.TestPictures;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a picture is, is told by its bytes, and never more of it is believed than there is. */
class PictureHeaderTest {
    private static String refusal(byte[] bytes) {
        return PictureHeader.read(bytes).fold(header -> "taken: " + header, Problem::detail);
    }

    private static PictureHeader header(byte[] bytes) {
        Outcome<PictureHeader> read = PictureHeader.read(bytes);
        return read.fold(header -> header, problem -> {
            throw new AssertionError(problem.detail());
        });
    }

    static List<Sample> samples() {
        return List.of(
                new Sample("jpeg", TestPictures.jpeg(30, 20), new PictureHeader(PictureType.JPEG, 30, 20, 1)),
                new Sample("png", TestPictures.png(30, 20), new PictureHeader(PictureType.PNG, 30, 20, 1)),
                new Sample(
                        "lossy webp",
                        TestPictures.webp("quarters-lossy"),
                        new PictureHeader(PictureType.WEBP, 64, 40, 1)),
                new Sample(
                        "lossless webp",
                        TestPictures.webp("quarters-lossless"),
                        new PictureHeader(PictureType.WEBP, 64, 40, 1)),
                new Sample(
                        "jpeg with exif",
                        TestPictures.jpegWithExif(30, 20, 6),
                        new PictureHeader(PictureType.JPEG, 30, 20, 6)));
    }

    /** A picture and what is to be found in it. */
    static final class Sample {
        private final String name;
        private final byte[] bytes;
        private final PictureHeader header;

        Sample(String name, byte[] bytes, PictureHeader header) {
            this.name = name;
            this.bytes = bytes;
            this.header = header;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void whatItIsAndHowLarge(Sample sample) {
        assertEquals(sample.header, header(sample.bytes));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void cutOffAnywhereItIsRefused(Sample sample) {
        for (int length = 0; length < sample.bytes.length; length++) {
            String refusal = refusal(Arrays.copyOf(sample.bytes, length));
            assertTrue(!refusal.startsWith("taken"), length + " of " + sample.bytes.length + ": " + refusal);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void noiseInItIsTakenOrRefusedAndNeverAFailure(Sample sample) {
        Random random = new Random(20261125);
        for (int round = 0; round < 2000; round++) {
            byte[] noisy = sample.bytes.clone();
            for (int times = 1 + random.nextInt(4); times > 0; times--) {
                noisy[random.nextInt(noisy.length)] = (byte) random.nextInt(256);
            }
            PictureHeader.read(noisy)
                    .fold(
                            header -> (long) header.width() * header.height() <= PictureHeader.MOST_PIXELS,
                            problem -> true);
        }
    }

    @Test
    void aSmallFileThatClaimsToBeHugeIsRefusedByItsHeader() {
        String refusal = refusal(TestPictures.pngThatClaims(50_000, 50_000));
        assertTrue(refusal.startsWith("has 50000 x 50000 pixels"), refusal);
        assertTrue(refusal(TestPictures.pngThatClaims(-1, 2)).contains("impossible size"));
        assertTrue(refusal(TestPictures.pngThatClaims(0, 2)).contains("impossible size"));
        assertEquals(64_000_000, header(TestPictures.pngThatClaims(8000, 8000)).width() * 8000);
        assertTrue(refusal(TestPictures.pngThatClaims(8000, 8001)).startsWith("has 8000 x 8001"));
    }

    @Test
    void aJpegThatClaimsToBeHugeIsRefused() {
        byte[] jpeg = TestPictures.jpeg(30, 20);
        int frame = IntStream.range(0, jpeg.length)
                .filter(at -> (jpeg[at] & 0xFF) == 0xFF && (jpeg[at + 1] & 0xFF) == 0xC0)
                .findFirst()
                .orElseThrow();
        ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 0xFFFF).putShort(frame + 7, (short) 0xFFFF);
        assertTrue(refusal(jpeg).startsWith("has 65535 x 65535"), refusal(jpeg));
    }

    @Test
    void aCanvasThatHidesALargerPictureIsRefused() {
        byte[] webp = TestPictures.webp("quarters-lossy");
        assertEquals("VP8X", new String(webp, 12, 4, StandardCharsets.US_ASCII));
        // Width and height of the canvas, each less one, in three bytes.
        webp[24] = 9;
        webp[27] = 9;
        assertTrue(refusal(webp).contains("two sizes disagree"), refusal(webp));
    }

    @Test
    void aSecondPictureInsideIsRefused() {
        byte[] webp = TestPictures.webp("quarters-lossy");
        byte[] chunks = Arrays.copyOfRange(webp, 12, webp.length);
        ByteBuffer twice = ByteBuffer.allocate(webp.length + chunks.length).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        twice.put(webp).put(chunks).putInt(4, twice.capacity() - 8);
        assertTrue(refusal(twice.array()).contains("two pictures"), refusal(twice.array()));
    }

    @Test
    void moreThanTwentyMebibytesAreRefusedUnseen() {
        byte[] large = Arrays.copyOf(TestPictures.png(2, 2), PictureHeader.MOST_BYTES + 1);
        assertTrue(refusal(large).contains("20 MiB"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "GIF89a nothing more",
                "<svg xmlns='http://www.w3.org/2000/svg'/>",
                "<html><script>1</script>",
                "%PDF-1.7",
                "RIFF\u0004\u0000\u0000\u0000WAVE"
            })
    void whatIsNoPictureIsRefusedWhateverItIsCalled(String text) {
        assertTrue(refusal(text.getBytes(StandardCharsets.ISO_8859_1)).contains("no JPEG, PNG or WebP"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 65_535})
    void anOrientationThatDoesNotExistIsNone(int orientation) {
        assertEquals(1, header(TestPictures.jpegWithExif(30, 20, orientation)).orientation());
    }

    @Test
    void lyingOnItsSideItsWidthAndHeightChangePlaces() {
        for (int orientation = 1; orientation <= 8; orientation++) {
            PictureHeader header = header(TestPictures.jpegWithExif(30, 20, orientation));
            assertEquals(orientation < 5 ? 30 : 20, header.uprightWidth());
            assertEquals(orientation < 5 ? 20 : 30, header.uprightHeight());
        }
    }
}
