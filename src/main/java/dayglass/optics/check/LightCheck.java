package dayglass.optics.check;

import dayglass.optics.Exposure;
import dayglass.optics.Finding;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.Optional;

/** The stop that the light allows against the one at which the picture is acceptably sharp. */
public final class LightCheck {
    private LightCheck() {}

    public static Finding of(Exposure exposure) {
        BigDecimal margin = exposure.marginStops();
        Verdict verdict = exposure.verdict();
        String why = switch (verdict) {
            case FITS -> "The light leaves " + margin + " stops to spare.";
            case FITS_WITH_CARE -> "The light leaves only " + margin + " stops to spare.";
            case DOES_NOT_FIT -> "It is " + margin.negate() + " stops too dark for an acceptably sharp picture.";
        };
        return new Finding("light", verdict, Optional.of(margin), why);
    }
}
