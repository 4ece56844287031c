package dayglass.catalogue;

import java.math.BigDecimal;

/**
 * A mount of the house's own, beside those that are published.
 *
 * @param flangeMm the flange focal distance
 * @param note where the distance is from; may be empty
 */
public record Mount(String name, BigDecimal flangeMm, String note) {
    /** The number of a mount. */
    public record Id(long number) implements dayglass.base.Id {}
}
