package dayglass.optics;

import java.util.Locale;

/** What a check comes to, from the best to the worst. */
public enum Verdict {
    FITS,
    FITS_WITH_CARE,
    DOES_NOT_FIT;

    /** As it is written: {@code fits with care}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public Verdict orWorse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
