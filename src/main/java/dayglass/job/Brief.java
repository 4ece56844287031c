package dayglass.job;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.LensModel.Look;
import dayglass.optics.FitQuestion;
import dayglass.optics.Mounts;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The picture that a job is to get, and what it may take.
 *
 * @param squeeze that is wanted, 1 for spherical; empty where any will do
 * @param looks that are wanted; the others do not matter
 * @param budget the most that may be paid in all
 * @param focals the focal length of a slot, in millimetres, where its name does not say it
 * @param tolerance how far a lens's focal length may lie from its slot's
 */
public record Brief(
        Job.Id job,
        Picture picture,
        Optional<BigDecimal> squeeze,
        Map<Look, Wish> looks,
        Optional<Money> budget,
        Map<String, BigDecimal> focals,
        Percent tolerance) {
    public static final Percent USUAL_TOLERANCE = Percent.of("10");

    private static final Pattern MILLIMETRES = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?)\\s*mm\\b");

    public Brief {
        looks = Map.copyOf(looks);
        focals = Map.copyOf(focals);
    }

    /** The camera, its delivery, the darkest scene and the set. */
    public record Picture(
            FitQuestion.Camera camera, BigDecimal aspect, FitQuestion.Light light, FitQuestion.OnSet set) {
        public FitQuestion.Setting with(Mounts mounts) {
            return new FitQuestion.Setting(camera, aspect, light, set, mounts);
        }

        /** The same where a filter takes some stops more. */
        public Picture filtered(BigDecimal stops) {
            return new Picture(
                    camera,
                    aspect,
                    new FitQuestion.Light(
                            light.lux(),
                            light.iso(),
                            light.framesPerSecond(),
                            light.shutterAngle(),
                            light.filterStops().add(stops)),
                    set);
        }
    }

    /**
     * How a look is wanted.
     *
     * @param grade 1 to 5
     * @param weight above 0
     */
    public record Wish(int grade, BigDecimal weight) {}

    /** What the brief says, else the number before "mm" in the slot's name. */
    public Optional<BigDecimal> focalOf(String slot) {
        if (focals.containsKey(slot)) {
            return Optional.ofNullable(focals.get(slot));
        }
        Matcher named = MILLIMETRES.matcher(slot);
        return named.find()
                ? Optional.of(new BigDecimal(named.group(1))).filter(mm -> mm.signum() > 0)
                : Optional.empty();
    }

    /** The camera that a slot is for: its name without the focal length, since one camera uses one lens at a time. */
    public String cameraOf(String slot) {
        return MILLIMETRES.matcher(slot).replaceFirst("").strip();
    }

    /** Whether a lens from one focal length to another (a prime's are one) serves a slot of this one. */
    public boolean serves(BigDecimal shortest, BigDecimal longest, BigDecimal wanted) {
        BigDecimal off = wanted.multiply(tolerance.fraction());
        return longest.compareTo(wanted.subtract(off)) >= 0 && shortest.compareTo(wanted.add(off)) <= 0;
    }
}
