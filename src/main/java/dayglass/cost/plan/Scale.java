package dayglass.cost.plan;

import java.math.BigInteger;

/**
 * The units in which a search counts: minor units divided by what all costs have in common, times a power of two, so
 * that prices can be finer than a cost while all stays exact in a {@code long}. Where amounts are so large that they
 * would not fit even so, the power is negative and costs are rounded down: bounds stay true but may not meet the total.
 *
 * @param common a divisor of every cost, in minor units
 * @param shift the power of two
 */
record Scale(BigInteger common, int shift) {
    private static final int FINEST = 10;
    private static final int ROOM_BITS = 59;

    /** The finest scale at which sums up to {@code largest} minor units fit. */
    static Scale forSumsUpTo(BigInteger largest, BigInteger common) {
        return new Scale(
                common, Math.min(FINEST, ROOM_BITS - largest.divide(common).bitLength()));
    }

    boolean exact() {
        return shift >= 0;
    }

    long of(BigInteger minor) {
        return minor.divide(common).shiftLeft(shift).longValueExact();
    }

    /** The least whole number of minor units that is not below a bound. */
    BigInteger minorFrom(long bound) {
        BigInteger units = BigInteger.valueOf(bound);
        return common.multiply(exact() ? units.negate().shiftRight(shift).negate() : units.shiftLeft(-shift));
    }
}
