package dayglass.catalogue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A kind of lens, attachment, filter or adapter, of which the house may have several units.
 *
 * @param maker as the user types it; with {@code name} unique
 * @param record what is printed on it or measured
 * @param grades how it looks, from a test
 * @param cautions what somebody who takes it out must know
 */
public record LensModel(
        String maker,
        String name,
        Kind kind,
        OpticalRecord record,
        Grades grades,
        List<String> tags,
        List<String> cautions) {
    public LensModel {
        tags = List.copyOf(tags);
        cautions = List.copyOf(cautions);
    }

    /** As people say it, maker first. */
    public String fullName() {
        return maker + " " + name;
    }

    /** The number of a lens model. */
    public record Id(long number) implements dayglass.base.Id {}

    /** What it is. */
    public enum Kind {
        SPHERICAL_PRIME,
        SPHERICAL_ZOOM,
        ANAMORPHIC_PRIME,
        ANAMORPHIC_ZOOM,
        FRONT_ATTACHMENT,
        EFFECT_FILTER,
        CLOSE_UP_DIOPTRE,
        MOUNT_ADAPTER;

        /** As it is written: {@code close-up dioptre}. */
        public String word() {
            String spaced = name().toLowerCase(Locale.ROOT).replace('_', ' ');
            return this == CLOSE_UP_DIOPTRE ? "close-up dioptre" : spaced;
        }

        public static Optional<Kind> of(String word) {
            return Arrays.stream(values())
                    .filter(kind -> kind.word().equals(word))
                    .findFirst();
        }
    }

    /**
     * The optical record; whatever is not known is empty. Decimals are exact, as typed.
     *
     * @param focalMm the focal length, or the short end of a zoom; of an attachment, of the taking lens that it works
     *     with
     * @param longestFocalMm the long end of a zoom, or of the taking lenses, where they are a range
     * @param squeeze 1 for none; of an attachment, what it adds
     * @param mounts the fitted kind first, then those that interchange
     * @param closeFocusM from the sensor
     * @param focusScale {@code feet} or {@code metres}
     * @param closeDownStops how far from wide open it is acceptably sharp
     * @param lightLossStops what an attachment takes of the light
     * @param focusing of an attachment: {@code single}, or {@code dual} where two barrels are pulled
     */
    public record OpticalRecord(
            Optional<BigDecimal> focalMm,
            Optional<BigDecimal> longestFocalMm,
            Optional<BigDecimal> tStop,
            BigDecimal squeeze,
            Optional<BigDecimal> imageCircleMm,
            List<String> mounts,
            Optional<BigDecimal> closeFocusM,
            Optional<BigDecimal> frontMm,
            Optional<Integer> weightG,
            Optional<BigDecimal> lengthMm,
            Optional<Integer> irisBlades,
            Optional<String> focusScale,
            Optional<BigDecimal> closeDownStops,
            Optional<BigDecimal> lightLossStops,
            Optional<String> focusing) {
        public OpticalRecord {
            mounts = List.copyOf(mounts);
        }
    }

    /** A look that is graded from 1 to 5. */
    public enum Look {
        FLARE,
        OUT_OF_FOCUS_SHAPE,
        DISTORTION,
        EDGE_SHARPNESS,
        COLOUR;

        /** As it is written: {@code out-of-focus shape}. */
        public String word() {
            String spaced = name().toLowerCase(Locale.ROOT).replace('_', ' ');
            return this == OUT_OF_FOCUS_SHAPE ? "out-of-focus shape" : spaced;
        }

        public static Optional<Look> of(String word) {
            return Arrays.stream(values())
                    .filter(look -> look.word().equals(word))
                    .findFirst();
        }
    }

    /**
     * How it looks.
     *
     * @param byLook 1 to 5 each; looks that were not graded are left out
     * @param testedOn when the test was made that the grades come from
     */
    public record Grades(Map<Look, Integer> byLook, String note, Optional<LocalDate> testedOn) {
        public static final Grades NONE = new Grades(Map.of(), "", Optional.empty());

        public Grades {
            byLook = Map.copyOf(byLook);
        }
    }
}
