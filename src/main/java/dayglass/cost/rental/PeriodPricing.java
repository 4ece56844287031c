package dayglass.cost.rental;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalCharge.AddOnCharge;
import dayglass.cost.rental.RentalCharge.BlockUsed;
import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.cost.rental.RentalTerms.Block;
import dayglass.cost.rental.RentalTerms.LongHire;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The price of a rental period, line by line and exact whatever the amounts. Every rounding is half up to the minor
 * unit. Days are numbered as in {@link Schedule}.
 */
public final class PeriodPricing {
    private final RentalTerms terms;
    private final Schedule schedule;
    private final Currency currency;
    private final List<Offer> offers;

    /** A block or the extra day: {@code afterDays} 0 but for the extra day. */
    private record Offer(Block block, int afterDays, boolean extraDay) {}

    public PeriodPricing(RentalTerms terms, Schedule schedule) {
        this.terms = terms;
        this.schedule = schedule;
        this.currency = terms.perTrip().currency();
        List<Offer> all = new ArrayList<>();
        terms.blocks().stream()
                .sorted(Comparator.comparing(Block::days).reversed())
                .forEach(block -> all.add(new Offer(block, 0, false)));
        terms.extraDay()
                .ifPresent(extra ->
                        all.add(new Offer(new Block(1, extra.price(), Optional.empty()), extra.afterDays(), true)));
        this.offers = List.copyOf(all);
    }

    /** What the period from day {@code first} to day {@code last} costs, or empty where no blocks can be laid. */
    public Optional<RentalCharge> charge(int first, int last) {
        return blocks(first, last).map(blocks -> charges(blocks, last - first + 1));
    }

    /** The total alone of every period from {@code first} to a day up to {@code last}; null where there is none. */
    public @Nullable BigInteger[] totalsFrom(int first, int last) {
        Laying laying = new Laying(first, last);
        @Nullable BigInteger[] totals = new BigInteger[last - first + 1];
        @Nullable BigInteger least = null;
        for (int length = totals.length; length >= 1; length--) {
            least = lesser(least, laying.least[length]);
            if (least != null) {
                totals[length - 1] = total(new Money(currency, least), length).minor();
            }
        }
        return totals;
    }

    /** An amount that no period inside the schedule passes, in minor units. */
    public BigInteger largestTotal() {
        BigInteger dearest = BigInteger.ZERO;
        for (Offer offer : offers) {
            for (DayUse use : DayUse.values()) {
                dearest = dearest.max(price(offer.block(), use, terms.dayFactors()));
            }
        }
        BigInteger hire = dearest.multiply(BigInteger.valueOf(schedule.days()))
                .max(terms.minimumCharge().minor());
        return withAddOns(new Money(currency, hire)).total().minor();
    }

    private Optional<List<BlockUsed>> blocks(int first, int last) {
        Laying laying = new Laying(first, last);
        int length = last - first + 1;
        if (laying.least[length] == null) {
            return Optional.empty();
        }
        List<BlockUsed> blocks = new ArrayList<>();
        for (int end = length; end > 0; ) {
            Offer offer = laying.by[end];
            int start = laying.startOf[end];
            int day = first + start;
            blocks.add(
                    0,
                    new BlockUsed(
                            schedule.dateOf(day),
                            offer.block().days(),
                            new Money(currency, priceOn(offer, day)),
                            offer.extraDay()));
            end = start;
        }
        return Optional.of(blocks);
    }

    /**
     * The cheapest blocks end to end from a first day. {@code least[n]}: exactly the first n days covered, or, for the
     * longest n, those or more.
     */
    private final class Laying {
        private final @Nullable BigInteger[] least;
        private final Offer[] by;
        private final int[] startOf;

        Laying(int first, int last) {
            int length = last - first + 1;
            least = new BigInteger[length + 1];
            by = new Offer[length + 1];
            startOf = new int[length + 1];
            least[0] = BigInteger.ZERO;
            for (int start = 0; start < length; start++) {
                BigInteger sofar = least[start];
                if (sofar != null) {
                    for (Offer offer : offers) {
                        lay(offer, first, start, sofar);
                    }
                }
            }
        }

        private void lay(Offer offer, int first, int start, BigInteger sofar) {
            int day = first + start;
            boolean begins = offer.block()
                    .startsOn()
                    .map(weekday -> weekday == schedule.weekdayOf(day))
                    .orElse(true);
            if (!begins || start < offer.afterDays()) {
                return;
            }
            int end = Math.min(start + offer.block().days(), least.length - 1);
            BigInteger price = sofar.add(priceOn(offer, day));
            BigInteger known = least[end];
            if (known == null || price.compareTo(known) < 0) {
                least[end] = price;
                by[end] = offer;
                startOf[end] = start;
            }
        }
    }

    private BigInteger priceOn(Offer offer, int day) {
        return price(offer.block(), schedule.useOn(day), terms.dayFactors());
    }

    /** A block's price in minor units where it begins on a day of that use; one-day blocks alone take the factor. */
    static BigInteger price(Block block, DayUse use, Map<DayUse, BigDecimal> dayFactors) {
        BigInteger price = block.price().minor();
        BigDecimal factor = dayFactors.get(use);
        if (block.days() != 1 || factor == null) {
            return price;
        }
        return new BigDecimal(price)
                .multiply(factor)
                .setScale(0, RoundingMode.HALF_UP)
                .unscaledValue();
    }

    private RentalCharge charges(List<BlockUsed> blocks, int length) {
        Money hire = blocks.stream().map(BlockUsed::price).reduce(Money.zero(currency), Money::plus);
        Money discount = discount(hire, length);
        Money net = hire.minus(discount);
        Money minimum = terms.minimumCharge();
        Money raised = net.compareTo(minimum) < 0 ? minimum.minus(net) : Money.zero(currency);
        WithAddOns all = withAddOns(net.plus(raised));
        return new RentalCharge(blocks, hire, discount, raised, terms.perTrip(), all.addOns(), all.total());
    }

    /**
     * The same charge with something taken off the hire by agreement, and the add-ons worked out anew.
     *
     * @param off not more than the hire comes to
     */
    public RentalCharge reduced(RentalCharge charge, Money off) {
        Money net = charge.hire()
                .minus(charge.discount())
                .plus(charge.raisedToMinimum())
                .minus(off);
        if (net.signum() < 0 || off.signum() < 0) {
            throw new IllegalArgumentException("no more than the hire can be taken off");
        }
        WithAddOns all = withAddOns(net);
        return new RentalCharge(
                charge.blocks(),
                charge.hire(),
                charge.discount().plus(off),
                charge.raisedToMinimum(),
                charge.trip(),
                all.addOns(),
                all.total());
    }

    private Money total(Money hire, int length) {
        Money net = hire.minus(discount(hire, length));
        return withAddOns(net.compareTo(terms.minimumCharge()) < 0 ? terms.minimumCharge() : net)
                .total();
    }

    private Money discount(Money hire, int length) {
        return terms.longHire().stream()
                .filter(entry -> entry.fromDays() <= length)
                .max(Comparator.comparing(LongHire::fromDays))
                .map(entry -> entry.percent().of(hire))
                .orElse(Money.zero(currency));
    }

    private record WithAddOns(List<AddOnCharge> addOns, Money total) {}

    private WithAddOns withAddOns(Money hire) {
        Map<String, Money> named = new HashMap<>();
        named.put(AddOn.HIRE, hire);
        named.put(AddOn.TRIP, terms.perTrip());
        Money total = hire.plus(terms.perTrip());
        List<AddOnCharge> charges = new ArrayList<>();
        for (AddOn addOn : terms.addOns()) {
            Money base = Money.zero(currency);
            for (String name : addOn.on()) {
                base = base.plus(java.util.Objects.requireNonNull(named.get(name), name));
            }
            Money amount = addOn.percent().of(base);
            named.put(addOn.name(), amount);
            charges.add(new AddOnCharge(addOn.name(), amount));
            total = total.plus(amount);
        }
        return new WithAddOns(charges, total);
    }

    private static @Nullable BigInteger lesser(@Nullable BigInteger one, @Nullable BigInteger other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.min(other);
    }
}
