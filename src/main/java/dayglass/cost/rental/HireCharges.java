package dayglass.cost.rental;

import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.cost.rental.RentalTerms.LongHire;
import java.util.Arrays;
import java.util.List;

/** What becomes of a hire: less its discount, at least the minimum, with trip and add-ons. In {@code long} minor units. */
final class HireCharges {
    /** Far more than what doubles lose on totals that fit, far less than a minor unit. */
    private static final double LOST_BY_DOUBLES = 1.0 / 16;

    private final Share[] discounts;
    private final int[] discountByLength;
    private final long minimum;
    private final long trip;
    private final AddOnShare[] addOns;
    private final long[] amounts;

    /** By length: a total is at least the hire times {@code slope} plus {@code start}, and at least {@code least}. */
    private final double[] slope;

    private final double[] start;
    private double least;

    /** The charge reckoned last: periods of neighbouring lengths often have the same hire. */
    private long knownHire = -1;

    private int knownDiscount;
    private long knownTotal;

    HireCharges(RentalTerms terms, int days) {
        List<LongHire> longHire = terms.longHire();
        discountByLength = new int[days + 1];
        discounts = new Share[longHire.size() + 1];
        slope = new double[days + 1];
        start = new double[days + 1];
        discounts[0] = Share.NOTHING;
        discounts(longHire);
        minimum = terms.minimumCharge().minor().longValueExact();
        trip = terms.perTrip().minor().longValueExact();
        addOns = addOns(terms.addOns());
        amounts = new long[addOns.length];
        estimate();
    }

    private void discounts(List<LongHire> longHire) {
        int[] from = new int[discounts.length];
        for (int i = 1; i < discounts.length; i++) {
            LongHire entry = longHire.get(i - 1);
            discounts[i] = Share.of(entry.percent().value(), 2);
            from[i] = entry.fromDays();
            for (int length = from[i]; length < discountByLength.length; length++) {
                if (from[discountByLength[length]] < from[i]) {
                    discountByLength[length] = i;
                }
            }
        }
    }

    /** Add-ons without their roundings, each of which is off by half a minor unit and what later ones make of it. */
    private void estimate() {
        double[] onHire = new double[addOns.length];
        double[] onTrip = new double[addOns.length];
        double[] lost = new double[addOns.length];
        double rise = 1;
        double fixed = trip - LOST_BY_DOUBLES;
        for (int i = 0; i < addOns.length; i++) {
            AddOnShare addOn = addOns[i];
            double share = addOn.share.asDouble();
            onHire[i] = addOn.onHire ? share : 0;
            onTrip[i] = addOn.onTrip ? share * trip : 0;
            lost[i] = 0.5;
            for (int earlier : addOn.earlier) {
                onHire[i] += share * onHire[earlier];
                onTrip[i] += share * onTrip[earlier];
                lost[i] += share * lost[earlier];
            }
            rise += onHire[i];
            fixed += onTrip[i] - lost[i];
        }
        least = minimum * rise + fixed;
        int discount = -1;
        for (int length = 0; length < slope.length; length++) {
            if (discountByLength[length] != discount) {
                discount = discountByLength[length];
                slope[length] = (1 - discounts[discount].asDouble()) * rise;
                start[length] = discounts[discount].isNothing() ? fixed : fixed - rise / 2;
            } else {
                slope[length] = slope[length - 1];
                start[length] = start[length - 1];
            }
        }
    }

    boolean discountsLongHire() {
        return discounts.length > 1;
    }

    /** Which discount a period of so many days has; periods of one discount and hire cost the same. */
    int discount(int length) {
        return discountByLength[length];
    }

    /** No total of a period of so many days and at least this hire is below this, rounded up to a whole minor unit. */
    double atLeast(double hire, int length) {
        double total = hire * slope[length] + start[length];
        return total > least ? total : least;
    }

    /** No total is below the sum of this over its days, where no hire is below the sum of {@code hire} over its days. */
    double leastADay(double hire) {
        double least = Double.MAX_VALUE;
        for (int length = 1; length < slope.length; length++) {
            least = Math.min(least, hire * slope[length] + Math.min(0, start[length]));
        }
        return Math.max(0, least);
    }

    long total(long hire, int discount) {
        if (hire == knownHire && discount == knownDiscount) {
            return knownTotal;
        }
        knownHire = hire;
        knownDiscount = discount;
        knownTotal = charged(hire, discount);
        return knownTotal;
    }

    private long charged(long hire, int discount) {
        long net = Math.max(hire - discounts[discount].of(hire), minimum);
        long total = net + trip;
        for (int i = 0; i < addOns.length; i++) {
            amounts[i] = addOns[i].of(net, trip, amounts);
            total += amounts[i];
        }
        return total;
    }

    private static AddOnShare[] addOns(List<AddOn> addOns) {
        AddOnShare[] shares = new AddOnShare[addOns.size()];
        for (int i = 0; i < shares.length; i++) {
            AddOn addOn = addOns.get(i);
            int[] earlier = new int[i];
            int count = 0;
            for (int other = 0; other < i; other++) {
                if (addOn.on().contains(addOns.get(other).name())) {
                    earlier[count++] = other;
                }
            }
            shares[i] = new AddOnShare(
                    Share.of(addOn.percent().value(), 2),
                    addOn.on().contains(AddOn.HIRE),
                    addOn.on().contains(AddOn.TRIP),
                    Arrays.copyOf(earlier, count));
        }
        return shares;
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
}
