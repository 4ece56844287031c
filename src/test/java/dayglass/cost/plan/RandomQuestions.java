package dayglass.cost.plan;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * Small questions that between them use everything that the contract allows, small enough to be tried out whole. The
 * same seed always gives the same question.
 */
public final class RandomQuestions {
    private static final LocalDate EARLIEST = LocalDate.of(2027, 4, 1);
    private static final List<String> CURRENCIES = List.of("EUR", "EUR", "EUR", "EUR", "JPY", "BHD");
    private static final List<String> FACTORS = List.of("0", "0.5", "0.333", "1", "1.5");
    private static final List<String> DISCOUNTS = List.of("5", "10", "12.5", "33.33", "50", "80", "100");
    private static final List<String> CHARGES = List.of("0", "12", "8.875", "20", "150");
    private static final List<Integer> BLOCK_DAYS = List.of(1, 1, 2, 3, 4, 5, 7, 7, 28);
    private static final String GLASS = "glass";
    private static final int MOST_COPIES = 4;

    private final Random random;
    private final Currency currency;
    private final Schedule schedule;
    private final List<String> slots;
    private final boolean sharedStock;
    private int copiesLeft = MOST_COPIES;

    private RandomQuestions(long seed) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L + 1);
        random.nextInt();
        this.currency = Currency.of(pick(CURRENCIES));
        this.schedule = schedule();
        this.slots = List.of("24 mm", "40 mm", "85 mm").subList(0, 1 + random.nextInt(3));
        this.sharedStock = chance(25);
    }

    /** The small question of a seed. */
    public static Question small(long seed) {
        return new RandomQuestions(seed).question(seed);
    }

    private Question question(long seed) {
        List<Question.Need> needs = needs();
        List<Question.Rental> rentals = new ArrayList<>();
        int wanted = random.nextInt(8) == 0 ? 0 : 1 + random.nextInt(3);
        for (int index = 0; index < wanted && copiesLeft > 0; index++) {
            rentals.add(rental(index));
        }
        List<Question.Purchase> purchases = new ArrayList<>();
        for (int index = random.nextInt(3); index > 0; index--) {
            purchases.add(purchase(index));
        }
        List<Question.Owned> owned = new ArrayList<>();
        for (int index = random.nextInt(4) - 1; index > 0; index--) {
            owned.add(new Question.Owned("own-" + index, covers(), chance(50) ? List.of() : windows()));
        }
        return new Question(
                "Small job " + seed,
                currency,
                chance(30) ? Percent.ZERO : new Percent(new BigDecimal(random.nextInt(300)).movePointLeft(1)),
                chance(50) ? Optional.of(amount(60_000)) : Optional.empty(),
                schedule,
                needs,
                rentals,
                purchases,
                owned,
                sharedStock ? Map.of(GLASS, 1 + random.nextInt(2)) : Map.of());
    }

    // --- when and what

    private Schedule schedule() {
        int days = 2 + random.nextInt(6);
        LocalDate first = EARLIEST.plusDays(random.nextInt(14));
        List<Schedule.Span> spans = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            boolean edge = day == 0 || day == days - 1;
            if (edge || !chance(15)) {
                LocalDate date = first.plusDays(day);
                DayUse use = chance(50) ? DayUse.SHOOT : pick(List.of(DayUse.values()));
                spans.add(new Schedule.Span(DateRange.inclusive(date, date), use));
            }
        }
        return new Schedule(spans);
    }

    private List<Question.Need> needs() {
        List<Question.Need> needs = new ArrayList<>();
        for (String slot : slots) {
            for (int more = chance(20) ? 2 : 1; more > 0; more--) {
                int count = chance(20) ? 2 : 1;
                needs.add(
                        chance(60)
                                ? new Question.Need(slot, count, uses(), List.of())
                                : new Question.Need(slot, count, Set.of(), dates()));
            }
        }
        return needs;
    }

    private Set<DayUse> uses() {
        if (chance(40)) {
            return Set.of(DayUse.PREP, DayUse.SHOOT);
        }
        Set<DayUse> uses = new HashSet<>(Set.of(pick(List.of(DayUse.values()))));
        for (DayUse use : DayUse.values()) {
            if (chance(40)) {
                uses.add(use);
            }
        }
        return uses;
    }

    /** One or two ranges inside the horizon, dark and unscheduled days as likely as any. */
    private List<DateRange> dates() {
        List<DateRange> dates = new ArrayList<>();
        int from = random.nextInt(schedule.days());
        int last = from + random.nextInt(schedule.days() - from);
        dates.add(DateRange.inclusive(schedule.dateOf(from), schedule.dateOf(last)));
        if (last + 1 < schedule.days() && chance(40)) {
            int next = last + 1 + random.nextInt(schedule.days() - last - 1);
            dates.add(DateRange.inclusive(schedule.dateOf(next), schedule.dateOf(next)));
        }
        return dates;
    }

    private Map<String, Integer> covers() {
        Map<String, Integer> covers = new HashMap<>(Map.of(pick(slots), chance(15) ? 2 : 1));
        for (String slot : slots) {
            if (chance(30)) {
                covers.put(slot, chance(15) ? 2 : 1);
            }
        }
        if (chance(8)) {
            covers.put("a slot that nobody needs", 1);
        }
        return covers;
    }

    /** One or two windows, sometimes adjoining, sometimes reaching past the horizon. */
    private List<DateRange> windows() {
        int first = random.nextInt(schedule.days() + 1) - 1;
        int days = 1 + random.nextInt(schedule.days());
        DateRange window = new DateRange(schedule.dateOf(first), schedule.dateOf(first + days));
        if (!chance(40)) {
            return List.of(window);
        }
        LocalDate second = window.until().plusDays(random.nextInt(2));
        return List.of(new DateRange(second, second.plusDays(1 + random.nextInt(5))), window);
    }

    // --- rentals

    private Question.Rental rental(int index) {
        int copies = Math.min(copiesLeft, chance(35) ? 2 : 1);
        copiesLeft -= copies;
        return new Question.Rental(
                "rent-" + index,
                "Supplier " + random.nextInt(2),
                covers(),
                copies,
                terms(),
                chance(65) ? List.of() : windows(),
                sharedStock && chance(75) ? Map.of(GLASS, 1) : Map.of());
    }

    private RentalTerms terms() {
        List<RentalTerms.Block> blocks = new ArrayList<>();
        if (chance(75)) {
            blocks.add(new RentalTerms.Block(1, amount(10_000), Optional.empty()));
        }
        for (int more = random.nextInt(4); more > 0 || blocks.isEmpty(); more--) {
            int days = pick(BLOCK_DAYS);
            Optional<DayOfWeek> weekday =
                    chance(30) ? Optional.of(schedule.weekdayOf(random.nextInt(schedule.days()))) : Optional.empty();
            blocks.add(new RentalTerms.Block(days, amount(6_000 + 4_000 * Math.min(days, 4)), weekday));
        }
        return new RentalTerms(
                blocks,
                chance(30) ? Optional.of(new RentalTerms.ExtraDay(random.nextInt(6), amount(6_000))) : Optional.empty(),
                chance(40) ? factors() : Map.of(),
                chance(45) ? longHire() : List.of(),
                chance(25) ? amount(25_000) : Money.zero(currency),
                chance(40) ? amount(5_000) : Money.zero(currency),
                addOns());
    }

    private Map<DayUse, BigDecimal> factors() {
        Map<DayUse, BigDecimal> factors = new EnumMap<>(DayUse.class);
        for (DayUse use : DayUse.values()) {
            if (chance(50)) {
                factors.put(use, new BigDecimal(pick(FACTORS)));
            }
        }
        return factors;
    }

    private List<RentalTerms.LongHire> longHire() {
        Map<Integer, Percent> entries = new TreeMap<>();
        for (int more = 1 + random.nextInt(2); more > 0; more--) {
            entries.put(2 + random.nextInt(6), Percent.of(pick(DISCOUNTS)));
        }
        return entries.entrySet().stream()
                .map(entry -> new RentalTerms.LongHire(entry.getKey(), entry.getValue()))
                .toList();
    }

    private List<RentalTerms.AddOn> addOns() {
        Map<String, RentalTerms.AddOn> addOns = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(List.of(RentalTerms.AddOn.HIRE, RentalTerms.AddOn.TRIP));
        for (int more = random.nextInt(8) - 4; more > 0; more--) {
            Set<String> on = new HashSet<>(Set.of(pick(names)));
            names.stream().filter(name -> chance(40)).forEach(on::add);
            String name = "add-on " + more;
            addOns.put(name, new RentalTerms.AddOn(name, Percent.of(pick(CHARGES)), on));
            names.add(name);
        }
        return List.copyOf(addOns.values());
    }

    // --- purchases

    private Question.Purchase purchase(int index) {
        return new Question.Purchase(
                "buy-" + index,
                "Supplier 2",
                covers(),
                chance(30) ? 2 : 1,
                purchaseTerms(),
                chance(60) ? schedule.dateOf(0) : schedule.dateOf(random.nextInt(schedule.days() + 2) - 1));
    }

    private PurchaseTerms purchaseTerms() {
        Money price = amount(40_000);
        return new PurchaseTerms(
                price,
                Percent.of(pick(CHARGES)),
                chance(30) ? List.of(new PurchaseTerms.Extra("case", amount(3_000))) : List.of(),
                1 + random.nextInt(40),
                new PurchaseTerms.Resale(
                        chance(50)
                                ? new PurchaseTerms.YearlyLoss(Percent.of(String.valueOf(random.nextInt(60) - 20)))
                                : points(price),
                        Percent.of(String.valueOf(random.nextInt(30)))),
                new PurchaseTerms.Holding(
                        new Percent(new BigDecimal(random.nextInt(40)).movePointLeft(1)),
                        chance(30) ? amount(3_000) : Money.zero(currency)),
                chance(30)
                        ? Optional.of(new PurchaseTerms.Service(1 + random.nextInt(14), amount(2_000)))
                        : Optional.empty(),
                chance(40)
                        ? Optional.of(new PurchaseTerms.Letting(
                                new BigDecimal(random.nextInt(60)).movePointLeft(1),
                                amount(5_000),
                                Percent.of(String.valueOf(random.nextInt(101)))))
                        : Optional.empty());
    }

    private PurchaseTerms.Points points(Money price) {
        List<PurchaseTerms.Point> points = new ArrayList<>();
        points.add(new PurchaseTerms.Point(12 + random.nextInt(30), amount(45_000)));
        if (chance(50)) {
            points.add(new PurchaseTerms.Point(random.nextInt(12), amount(45_000)));
        } else if (chance(50)) {
            points.add(new PurchaseTerms.Point(0, price));
        }
        return new PurchaseTerms.Points(points);
    }

    // --- draws

    /** An amount in minor units up to a limit: round half the time, so that ties occur, and now and then nothing. */
    private Money amount(int most) {
        if (chance(3)) {
            return Money.zero(currency);
        }
        int minor = 1 + random.nextInt(most);
        return Money.ofMinor(currency, chance(50) ? (minor / 1_000 + 1) * 1_000L : minor);
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
