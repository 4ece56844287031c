package dayglass.base;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Splitting an amount so that the parts add up to it exactly, by largest remainder. */
public final class Shares {
    private Shares() {}

    /**
     * Splits an amount in proportion to weights. Each part is first rounded towards negative infinity; the minor units
     * left over go one each to the largest remainders, of equal ones to the earlier in the list.
     *
     * <p>Source: the largest-remainder (Hamilton) method; as in Fowler, Patterns of Enterprise Application
     * Architecture, Money, where 0.05 by 3:7 is 0.02 and 0.03.
     *
     * @param amount the whole, in minor units, of either sign
     * @param weights not negative, not all zero
     * @return one part a weight, in their order; their sum is the amount
     */
    public static List<BigInteger> byWeight(BigInteger amount, List<BigInteger> weights) {
        BigInteger sum = weights.stream().reduce(BigInteger.ZERO, BigInteger::add);
        if (sum.signum() <= 0 || weights.stream().anyMatch(weight -> weight.signum() < 0)) {
            throw new IllegalArgumentException("weights must not be negative and must not all be zero");
        }
        List<BigInteger> parts = new ArrayList<>();
        List<BigInteger> remainders = new ArrayList<>();
        BigInteger left = amount;
        for (BigInteger weight : weights) {
            BigInteger product = amount.multiply(weight);
            BigInteger remainder = product.mod(sum);
            BigInteger part = product.subtract(remainder).divide(sum);
            parts.add(part);
            remainders.add(remainder);
            left = left.subtract(part);
        }
        IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> remainders.get(i)).reversed())
                .limit(left.intValueExact())
                .forEach(i -> parts.set(i, parts.get(i).add(BigInteger.ONE)));
        return List.copyOf(parts);
    }

    /** Splits an amount into equal parts that differ by one minor unit at most, the larger first. */
    public static List<BigInteger> evenly(BigInteger amount, int parts) {
        return byWeight(amount, java.util.Collections.nCopies(parts, BigInteger.ONE));
    }
}
