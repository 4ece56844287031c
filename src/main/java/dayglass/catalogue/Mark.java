package dayglass.catalogue;

import java.util.Locale;

/**
 * What an add-on of a rate is, so that each is counted once: a charge of the house, a waiver of loss and damage that
 * proof of insurance takes off, or a tax.
 */
public enum Mark {
    CHARGE,
    WAIVER,
    TAX;

    /** As it is written: {@code waiver}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
