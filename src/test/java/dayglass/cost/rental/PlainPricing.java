package dayglass.cost.rental;

import dayglass.base.Currency;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.cost.rental.RentalTerms.Block;
import dayglass.cost.rental.RentalTerms.LongHire;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a rental period costs, slowly and obviously: decimals in major units, every rule in the order in which the
 * contract states it. The engine's own pricing is held against this; they share nothing but the terms.
 */
public final class PlainPricing {
    /** Which blocks may be laid. */
    public enum Rates {
        EVERY_BLOCK,
        DAYS_ALONE,
        WEEKS_ALONE
    }

    /** One block that could be laid on one day of a period, at what it costs there. */
    public record Laid(int day, int days, BigDecimal price, boolean extraDay) {}

    /** A priced period; amounts in major units. */
    public record Price(
            BigDecimal hire,
            BigDecimal discount,
            BigDecimal raisedToMinimum,
            BigDecimal trip,
            Map<String, BigDecimal> addOns,
            BigDecimal total) {}

    private final RentalTerms terms;
    private final Schedule schedule;
    private final Currency currency;
    private final Rates rates;

    public PlainPricing(RentalTerms terms, Schedule schedule, Currency currency, Rates rates) {
        this.terms = terms;
        this.schedule = schedule;
        this.currency = currency;
        this.rates = rates;
    }

    /** The price of the period from the first day to the last, both counted, or empty where no blocks can cover it. */
    public Optional<Price> price(int first, int last) {
        return leastHire(first, last).map(hire -> charge(hire, last - first + 1));
    }

    private Optional<BigDecimal> leastHire(int first, int last) {
        Map<Integer, BigDecimal> leastFrom = new LinkedHashMap<>();
        for (int day = last; day >= first; day--) {
            for (Laid laid : blocksOn(day, first)) {
                int next = day + laid.days();
                BigDecimal rest = next > last ? BigDecimal.ZERO : leastFrom.get(next);
                if (rest != null) {
                    leastFrom.merge(day, laid.price().add(rest), BigDecimal::min);
                }
            }
        }
        return Optional.ofNullable(leastFrom.get(first)).map(this::rounded);
    }

    /** Everything that may begin on a day of a period that began on {@code first}. */
    public List<Laid> blocksOn(int day, int first) {
        List<Laid> found = new ArrayList<>();
        for (Block block : terms.blocks()) {
            boolean weekdayFits = block.startsOn()
                    .map(weekday -> weekday == schedule.weekdayOf(day))
                    .orElse(true);
            if (weekdayFits && allowed(block)) {
                BigDecimal price = block.price().major();
                found.add(new Laid(day, block.days(), block.days() == 1 ? factored(price, day) : price, false));
            }
        }
        if (rates == Rates.EVERY_BLOCK
                && terms.extraDay().isPresent()
                && day - first >= terms.extraDay().get().afterDays()) {
            found.add(new Laid(day, 1, factored(terms.extraDay().get().price().major(), day), true));
        }
        return found;
    }

    private boolean allowed(Block block) {
        return switch (rates) {
            case EVERY_BLOCK -> true;
            case DAYS_ALONE -> block.days() == 1 && block.startsOn().isEmpty();
            case WEEKS_ALONE -> block.days() == 7 && block.startsOn().isEmpty();
        };
    }

    private BigDecimal factored(BigDecimal price, int day) {
        DayUse use = schedule.useOn(day);
        return rounded(price.multiply(terms.dayFactors().getOrDefault(use, BigDecimal.ONE)));
    }

    private Price charge(BigDecimal hire, int length) {
        BigDecimal discount = percentOf(hire, discountPercent(length));
        BigDecimal discounted = hire.subtract(discount);
        BigDecimal charged = discounted.max(terms.minimumCharge().major());
        BigDecimal trip = terms.perTrip().major();
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        amounts.put(AddOn.HIRE, charged);
        amounts.put(AddOn.TRIP, trip);
        Map<String, BigDecimal> addOns = new LinkedHashMap<>();
        BigDecimal total = charged.add(trip);
        for (AddOn addOn : terms.addOns()) {
            BigDecimal base = BigDecimal.ZERO;
            for (String name : addOn.on()) {
                base = base.add(amounts.getOrDefault(name, BigDecimal.ZERO));
            }
            BigDecimal amount = percentOf(base, addOn.percent().value());
            amounts.put(addOn.name(), amount);
            addOns.put(addOn.name(), amount);
            total = total.add(amount);
        }
        return new Price(hire, discount, charged.subtract(discounted), trip, addOns, total);
    }

    private BigDecimal discountPercent(int length) {
        int reached = 0;
        BigDecimal percent = BigDecimal.ZERO;
        for (LongHire entry : terms.longHire()) {
            if (entry.fromDays() <= length && entry.fromDays() > reached) {
                reached = entry.fromDays();
                percent = entry.percent().value();
            }
        }
        return percent;
    }

    private BigDecimal percentOf(BigDecimal amount, BigDecimal percent) {
        return rounded(amount.multiply(percent).divide(BigDecimal.valueOf(100)));
    }

    private BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(currency.decimals(), RoundingMode.HALF_UP);
    }
}
