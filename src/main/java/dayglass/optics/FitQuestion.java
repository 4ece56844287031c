package dayglass.optics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One lens on one camera for one delivery. What is empty was not asked or is not known. Lengths in millimetres unless
 * the name says otherwise; all numbers are exact and positive, stops may be 0.
 *
 * @param aspect of the delivered picture, its width over its height
 */
public record FitQuestion(
        Camera camera,
        BigDecimal aspect,
        Light light,
        OnSet set,
        Lens lens,
        Optional<Attachment> attachment,
        Mounts mounts) {

    /** All that is asked but the glass. */
    public record Setting(Camera camera, BigDecimal aspect, Light light, OnSet set, Mounts mounts) {
        public FitQuestion of(Lens lens, Optional<Attachment> attachment) {
            return new FitQuestion(camera, aspect, light, set, lens, attachment, mounts);
        }
    }

    /** A camera in one recorded mode, its sensor as far as it is recorded. */
    public record Camera(BigDecimal width, BigDecimal height, Optional<Photosites> photosites, String mount) {}

    /** How many photosites the recorded sensor has each way. */
    public record Photosites(int wide, int high) {}

    /**
     * The darkest scene.
     *
     * @param lux at the subject
     * @param iso the speed that the camera is set to
     * @param shutterAngle in degrees, to 360
     * @param filterStops what filters take
     */
    public record Light(
            Optional<BigDecimal> lux,
            Optional<Integer> iso,
            Optional<BigDecimal> framesPerSecond,
            Optional<BigDecimal> shutterAngle,
            BigDecimal filterStops) {
        public static final Light NOT_ASKED =
                new Light(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), BigDecimal.ZERO);
    }

    /**
     * What the set asks.
     *
     * @param closestSubjectM metres from the sensor
     * @param payloadG what the rig carries, in grams
     * @param matteBoxMm the front diameter that the matte box takes
     */
    public record OnSet(
            Optional<BigDecimal> closestSubjectM, Optional<Integer> payloadG, Optional<BigDecimal> matteBoxMm) {
        public static final OnSet NOT_ASKED = new OnSet(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * A lens, or the taking lens behind an attachment.
     *
     * @param focals the focal length, or the two ends of a zoom, the short one first
     * @param squeeze 1 for none
     * @param mounts the one fitted first, then those that it can be changed to
     * @param closeDownStops from wide open to where it is acceptably sharp
     */
    public record Lens(
            List<BigDecimal> focals,
            BigDecimal tStop,
            BigDecimal squeeze,
            Optional<BigDecimal> imageCircle,
            List<String> mounts,
            Optional<BigDecimal> closeFocusM,
            Optional<BigDecimal> frontMm,
            Optional<Integer> weightG,
            BigDecimal closeDownStops) {
        public Lens {
            focals = List.copyOf(focals);
            mounts = List.copyOf(mounts);
        }
    }

    /**
     * A front anamorphic attachment; its front and close focus take the place of the lens's.
     *
     * @param squeeze multiplies the lens's
     * @param minFocal the shortest taking lens it works with; open where empty
     * @param dual both barrels are pulled
     */
    public record Attachment(
            BigDecimal squeeze,
            BigDecimal lightLossStops,
            BigDecimal closeDownStops,
            Optional<BigDecimal> minFocal,
            Optional<BigDecimal> maxFocal,
            Optional<BigDecimal> frontMm,
            Optional<Integer> weightG,
            Optional<BigDecimal> closeFocusM,
            boolean dual) {}

    /** The squeeze of lens and attachment together. */
    public BigDecimal squeeze() {
        return attachment.map(front -> front.squeeze().multiply(lens.squeeze())).orElse(lens.squeeze());
    }

    /** How far the lens is closed down for an acceptably sharp picture: as far as the softer of the two wants. */
    public BigDecimal closeDownStops() {
        return attachment
                .map(front -> front.closeDownStops().max(lens.closeDownStops()))
                .orElse(lens.closeDownStops());
    }

    public BigDecimal lightLossStops() {
        return attachment.map(Attachment::lightLossStops).orElse(BigDecimal.ZERO);
    }

    public Optional<BigDecimal> closeFocusM() {
        return attachment.flatMap(Attachment::closeFocusM).or(lens::closeFocusM);
    }

    public Optional<BigDecimal> frontMm() {
        return attachment.flatMap(Attachment::frontMm).or(lens::frontMm);
    }

    public Optional<Integer> weightG() {
        int front = attachment.flatMap(Attachment::weightG).orElse(0);
        return lens.weightG().map(own -> Math.addExact(own, front));
    }
}
