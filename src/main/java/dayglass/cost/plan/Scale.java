package dayglass.cost.plan;

import java.math.BigInteger;

/**
 * The units in which a search counts: minor units times a power of two, so that prices can be finer than a minor unit
 * while all stays exact in a {@code long}. Where amounts are so large that they would not fit, the power is negative
 * and costs are rounded down: bounds stay true but may no longer meet the total.
 *
 * @param shift the power of two
 */
record Scale(int shift) {
    private static final int FINEST = 10;
    private static final int ROOM_BITS = 59;

    /** The finest scale at which sums up to {@code largest} minor units fit. */
    static Scale forSumsUpTo(BigInteger largest) {
        return new Scale(Math.min(FINEST, ROOM_BITS - largest.bitLength()));
    }

    boolean exact() {
        return shift >= 0;
    }

    long of(BigInteger minor) {
        return minor.shiftLeft(shift).longValueExact();
    }

    /** The least whole number of minor units that is not below a bound. */
    BigInteger minorFrom(long bound) {
        BigInteger units = BigInteger.valueOf(bound);
        return exact() ? units.negate().shiftRight(shift).negate() : units.shiftLeft(-shift);
    }
}
