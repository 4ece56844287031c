package dayglass.optics;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Whether the light is enough: N² / t = E·S / C, with C = 250 (ISO 2720, flat receptor), against the stop at which the
 * picture is acceptably sharp, less what filters and an attachment take.
 */
public final class Exposure {
    private static final BigDecimal CONSTANT = BigDecimal.valueOf(250);
    private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);

    /** What half a stop and more to spare means: the light fits without care. */
    private static final BigDecimal ENOUGH_STOPS = new BigDecimal("0.5");

    private final Ratio allowed;
    private final BigDecimal stops;
    private final BigDecimal filterStops;
    private final BigDecimal lux;

    /**
     * @param allowed N² over T², filters apart: what the light allows over what the lens passes wide open
     * @param stops what filters, closing down and the attachment take
     */
    private Exposure(Ratio allowed, BigDecimal stops, BigDecimal filterStops, BigDecimal lux) {
        this.allowed = allowed;
        this.stops = stops;
        this.filterStops = filterStops;
        this.lux = lux;
    }

    /** Empty where lux, speed, frame rate or shutter angle is not given. */
    public static Optional<Exposure> of(FitQuestion question) {
        FitQuestion.Light light = question.light();
        if (light.lux().isEmpty()
                || light.iso().isEmpty()
                || light.framesPerSecond().isEmpty()
                || light.shutterAngle().isEmpty()) {
            return Optional.empty();
        }
        BigDecimal lux = light.lux().get();
        BigDecimal exposure = lux.multiply(BigDecimal.valueOf(light.iso().get()))
                .multiply(light.shutterAngle().get());
        BigDecimal against = FULL_TURN.multiply(light.framesPerSecond().get()).multiply(CONSTANT);
        BigDecimal tStop = question.lens().tStop();
        return Optional.of(new Exposure(
                new Ratio(exposure, against.multiply(tStop).multiply(tStop)),
                light.filterStops().add(question.closeDownStops()).add(question.lightLossStops()),
                light.filterStops(),
                lux));
    }

    /** The stop that the light allows on a lens of this T-stop, filters taken off. */
    public BigDecimal lightAllows(BigDecimal tStop) {
        return Figures.telling(
                Math.sqrt(allowed.inDouble()) * tStop.doubleValue() * Math.pow(2, -filterStops.doubleValue() / 2));
    }

    /** Stops to spare; negative where it is too dark. */
    public BigDecimal marginStops() {
        return Figures.telling(margin());
    }

    private double margin() {
        return PowerOfTwo.compare(allowed, stops) == 0
                ? 0
                : Math.log(allowed.inDouble()) / Math.log(2) - stops.doubleValue();
    }

    public Verdict verdict() {
        if (PowerOfTwo.compare(allowed, stops.add(ENOUGH_STOPS)) >= 0) {
            return Verdict.FITS;
        }
        return PowerOfTwo.compare(allowed, stops) >= 0 ? Verdict.FITS_WITH_CARE : Verdict.DOES_NOT_FIT;
    }

    /** What would do at the subject, where it is too dark. */
    public Optional<BigDecimal> luxNeeded() {
        return verdict() == Verdict.DOES_NOT_FIT
                ? Optional.of(Figures.telling(lux.doubleValue() * Math.pow(2, -margin())))
                : Optional.empty();
    }
}
