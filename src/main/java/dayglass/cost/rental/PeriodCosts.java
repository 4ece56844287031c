package dayglass.cost.rental;

import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.cost.rental.RentalTerms.Block;
import dayglass.cost.rental.RentalTerms.LongHire;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The totals of all rental periods of one offer in {@code long} minor units, fast enough for a search to ask for every
 * one of them. The same arithmetic as {@link PeriodPricing}, to the minor unit, for amounts that {@link #fit} says are
 * small enough.
 */
public final class PeriodCosts {
    /** A period that cannot be charged. Adding a few of these does not overflow. */
    public static final long NONE = Long.MAX_VALUE / 8;

    /** Totals up to this leave room for every intermediate product and sum of a search. */
    private static final double MOST = 1L << 43;

    private static final int WORD_BITS = 62;
    private static final long[] NO_LIMIT = {};

    private final int days;
    private final long[][] oneDayPrices;
    private final int[] longerDays;
    private final long[][] longerPrices;
    private final int extraAfter;
    private final long[] extraPrice;
    private final Share[] discounts;
    private final int[] discountByLength;
    private final long minimum;
    private final long trip;
    private final AddOnShare[] addOns;
    private final long[] amounts;

    /** What is left of a hire after each discount; then a total is at least hire times {@code rise} plus {@code fixed}. */
    private final double[] kept;

    private double rise = 1;
    private double fixed;
    private final long[] least;

    public PeriodCosts(RentalTerms terms, Schedule schedule) {
        days = schedule.days();
        oneDayPrices = terms.blocks().stream()
                .filter(block -> block.days() == 1)
                .map(block -> prices(block, terms, schedule))
                .toArray(long[][]::new);
        List<Block> longer =
                terms.blocks().stream().filter(block -> block.days() > 1).toList();
        longerDays = longer.stream().mapToInt(Block::days).toArray();
        longerPrices =
                longer.stream().map(block -> prices(block, terms, schedule)).toArray(long[][]::new);
        extraAfter = terms.extraDay().map(RentalTerms.ExtraDay::afterDays).orElse(Integer.MAX_VALUE);
        extraPrice = terms.extraDay()
                .map(extra -> prices(new Block(1, extra.price(), java.util.Optional.empty()), terms, schedule))
                .orElse(new long[0]);
        List<LongHire> longHire = terms.longHire().stream()
                .sorted(Comparator.comparing(LongHire::fromDays))
                .toList();
        discounts = Stream.concat(Stream.of(Percent.ZERO), longHire.stream().map(LongHire::percent))
                .map(Share::of)
                .toArray(Share[]::new);
        discountByLength = new int[days + 1];
        for (int i = 0; i < longHire.size(); i++) {
            int fromDays = Math.min(longHire.get(i).fromDays(), days + 1);
            Arrays.fill(discountByLength, fromDays, days + 1, i + 1);
        }
        minimum = terms.minimumCharge().minor().longValueExact();
        trip = terms.perTrip().minor().longValueExact();
        addOns = addOns(terms.addOns());
        amounts = new long[addOns.length];
        least = new long[days + 1];
        kept = new double[discounts.length];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = 1 - discounts[i].asDouble();
        }
        estimate();
    }

    /** Add-ons without their roundings, each of which is off by half a minor unit and what later ones make of it. */
    private void estimate() {
        double[] onHire = new double[addOns.length];
        double[] onTrip = new double[addOns.length];
        double[] off = new double[addOns.length];
        fixed = trip;
        double slack = 1;
        for (int i = 0; i < addOns.length; i++) {
            AddOnShare addOn = addOns[i];
            double share = addOn.share.asDouble();
            onHire[i] = addOn.onHire ? share : 0;
            onTrip[i] = addOn.onTrip ? share * trip : 0;
            off[i] = 0.5;
            for (int earlier : addOn.earlier) {
                onHire[i] += share * onHire[earlier];
                onTrip[i] += share * onTrip[earlier];
                off[i] += share * off[earlier];
            }
            rise += onHire[i];
            fixed += onTrip[i];
            slack += off[i];
        }
        fixed -= slack + rise;
    }

    /** Whether every total of these terms on so many days is small enough for this class; never too hopeful. */
    public static boolean fit(RentalTerms terms, int days) {
        double price = terms.extraDay()
                .map(extra -> extra.price().minor().doubleValue())
                .orElse(0.0);
        for (Block block : terms.blocks()) {
            price = Math.max(price, block.price().minor().doubleValue());
        }
        double factor = 1;
        for (BigDecimal each : terms.dayFactors().values()) {
            factor = Math.max(factor, each.doubleValue());
        }
        double sum = Math.max(
                        (price * factor + 1) * days,
                        terms.minimumCharge().minor().doubleValue())
                + terms.perTrip().minor().doubleValue();
        for (AddOn addOn : terms.addOns()) {
            // At most a percentage of all that came before, and a minor unit for the rounding.
            sum += sum * addOn.percent().value().doubleValue() / 100 + 1;
        }
        return sum < MOST;
    }

    /** Whether a period that ends earlier never costs more, all else equal: so it is without long-hire discounts. */
    public boolean growsWithLength() {
        return discounts.length == 1;
    }

    /**
     * Writes the totals of the periods from {@code first} to each day up to {@code last}: {@code into[i]} for the
     * period of i + 1 days, {@link #NONE} where no blocks can be laid. Not safe for use by two threads at once.
     */
    public void totalsFrom(int first, int last, long[] into) {
        totalsBelow(first, last, NO_LIMIT, into);
    }

    /**
     * The same, but a total that is not below {@code useful[i]} may be left out as {@link #NONE}: most periods are of no
     * use to a search that knows better ones, and an estimate tells without the exact roundings.
     *
     * @param useful by length, or empty for no limit
     */
    public void totalsBelow(int first, int last, long[] useful, long[] into) {
        hiresFrom(first, last, into);
        long knownHire = -1;
        long knownTotal = 0;
        int knownDiscount = -1;
        for (int i = last - first; i >= 0; i--) {
            long hire = into[i];
            if (hire >= NONE) {
                continue;
            }
            int discount = discountByLength[i + 1];
            if (useful.length > 0
                    && (long) (Math.max(hire * kept[discount], (double) minimum) * rise + fixed) >= useful[i]) {
                into[i] = NONE;
                continue;
            }
            if (hire != knownHire || discount != knownDiscount) {
                knownHire = hire;
                knownDiscount = discount;
                knownTotal = total(hire, discounts[discount]);
            }
            into[i] = knownTotal;
        }
    }

    /** The cheapest blocks end to end: those that end on a day, and, past the last day, the cheapest that reach it. */
    private void hiresFrom(int first, int last, long[] into) {
        int length = last - first + 1;
        long[] reached = least;
        Arrays.fill(reached, 1, length + 1, NONE);
        reached[0] = 0;
        long past = NONE;
        for (int start = 0; start < length; start++) {
            long sofar = reached[start];
            if (sofar >= NONE) {
                continue;
            }
            int day = first + start;
            long next = reached[start + 1];
            for (long[] price : oneDayPrices) {
                next = Math.min(next, sofar + price[day]);
            }
            if (start >= extraAfter) {
                next = Math.min(next, sofar + extraPrice[day]);
            }
            reached[start + 1] = next;
            for (int i = 0; i < longerDays.length; i++) {
                long sum = sofar + longerPrices[i][day];
                int end = start + longerDays[i];
                if (end > length) {
                    past = Math.min(past, sum);
                } else if (sum < reached[end]) {
                    reached[end] = sum;
                }
            }
        }
        long cheapest = past;
        for (int i = length; i >= 1; i--) {
            cheapest = Math.min(cheapest, reached[i]);
            into[i - 1] = cheapest;
        }
    }

    private long total(long hire, Share discount) {
        long net = Math.max(hire - discount.of(hire), minimum);
        long total = net + trip;
        for (int i = 0; i < addOns.length; i++) {
            amounts[i] = addOns[i].of(net, trip, amounts);
            total += amounts[i];
        }
        return total;
    }

    private static long[] prices(Block block, RentalTerms terms, Schedule schedule) {
        boolean factored = block.days() == 1 && !terms.dayFactors().isEmpty();
        Map<DayUse, Long> byUse = new EnumMap<>(DayUse.class);
        for (DayUse use : factored ? terms.dayFactors().keySet() : Set.<DayUse>of()) {
            byUse.put(use, PeriodPricing.price(block, use, terms.dayFactors()).longValueExact());
        }
        long plain = block.price().minor().longValueExact();
        long[] prices = new long[schedule.days()];
        for (int day = 0; day < prices.length; day++) {
            boolean begins = block.startsOn().isEmpty() || block.startsOn().get() == schedule.weekdayOf(day);
            long price = factored ? byUse.getOrDefault(schedule.useOn(day), plain) : plain;
            prices[day] = begins ? price : NONE;
        }
        return prices;
    }

    private static AddOnShare[] addOns(List<AddOn> addOns) {
        List<AddOnShare> shares = new ArrayList<>();
        List<String> names = addOns.stream().map(AddOn::name).toList();
        for (AddOn addOn : addOns) {
            int[] earlier = addOn.on().stream()
                    .filter(name -> !name.equals(AddOn.HIRE) && !name.equals(AddOn.TRIP))
                    .mapToInt(names::indexOf)
                    .toArray();
            shares.add(new AddOnShare(
                    Share.of(addOn.percent()),
                    addOn.on().contains(AddOn.HIRE),
                    addOn.on().contains(AddOn.TRIP),
                    earlier));
        }
        return shares.toArray(AddOnShare[]::new);
    }

    private static final class AddOnShare {
        private final Share share;
        private final boolean onHire;
        private final boolean onTrip;
        private final int[] earlier;

        AddOnShare(Share share, boolean onHire, boolean onTrip, int[] earlier) {
            this.share = share;
            this.onHire = onHire;
            this.onTrip = onTrip;
            this.earlier = earlier;
        }

        long of(long hire, long trip, long[] amounts) {
            long base = (onHire ? hire : 0) + (onTrip ? trip : 0);
            for (int i : earlier) {
                base += amounts[i];
            }
            return share.of(base);
        }
    }

    /** A percentage as a fraction in lowest terms. */
    private record Share(long numerator, long denominator, int numeratorBits) {
        static Share of(Percent percent) {
            BigDecimal fraction = percent.fraction();
            long numerator = fraction.unscaledValue().longValueExact();
            long denominator = 1;
            for (int place = 0; place < fraction.scale(); place++) {
                denominator = Math.multiplyExact(denominator, 10);
            }
            for (int place = fraction.scale(); place < 0; place++) {
                numerator = Math.multiplyExact(numerator, 10);
            }
            long common = greatestCommonDivisor(denominator, numerator);
            numerator /= common;
            return new Share(numerator, denominator / common, Long.SIZE - Long.numberOfLeadingZeros(numerator) + 1);
        }

        double asDouble() {
            return (double) numerator / denominator;
        }

        private static long greatestCommonDivisor(long one, long other) {
            return other == 0 ? one : greatestCommonDivisor(other, one % other);
        }

        /** This share of an amount that is not negative, half up. */
        long of(long amount) {
            if (numerator == 0) {
                return 0;
            }
            if (Long.SIZE - Long.numberOfLeadingZeros(amount) + numeratorBits < WORD_BITS) {
                return (amount * numerator + denominator / 2) / denominator;
            }
            BigInteger half = BigInteger.valueOf(denominator / 2);
            return BigInteger.valueOf(amount)
                    .multiply(BigInteger.valueOf(numerator))
                    .add(half)
                    .divide(BigInteger.valueOf(denominator))
                    .longValueExact();
        }
    }
}
