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
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Jobs of the size and shape of real ones: prep, weeks of five or six shooting days, dark and travel days, wrap; some
 * slots wanted throughout and some for a scene; suppliers whose sets compete with their own and others' single lenses,
 * a week at three to five days' price (common practice). The same seed always gives the same job, and no seed is drawn
 * again because its job suits nobody.
 */
public final class RandomJobs {
    private static final Currency EUR = Currency.of("EUR");
    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    private final Random random;
    private final int days;
    private final List<String> slots = new ArrayList<>();
    private final List<Integer> dayRates = new ArrayList<>();
    private final Schedule schedule;

    private RandomJobs(long seed, int slots, int days) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L + 7);
        random.nextInt();
        this.days = days;
        for (int index = 0; index < slots; index++) {
            this.slots.add("slot " + (index + 1));
            dayRates.add(60 + 5 * random.nextInt(50));
        }
        this.schedule = schedule();
    }

    /** A film job of so many slots, days and options in all. */
    public static Question film(long seed, int slots, int days, int options) {
        return new RandomJobs(seed, slots, days).film(seed, options);
    }

    /** One slot wanted on every prep and shooting day, rented only. */
    public static Question oneSlot(long seed, int days, int options) {
        RandomJobs jobs = new RandomJobs(seed, 1, days);
        List<Question.Rental> rentals = new ArrayList<>();
        for (int index = 0; index < options; index++) {
            rentals.add(jobs.rental("single-" + index, List.of(0), index, 1));
        }
        return jobs.question("One slot " + seed, List.of(jobs.throughout(0, 1)), rentals, List.of(), List.of());
    }

    private Question film(long seed, int options) {
        List<Question.Need> needs = new ArrayList<>();
        for (int slot = 0; slot < slots.size(); slot++) {
            int count = random.nextInt(8) == 0 ? 2 : 1;
            needs.add(slot % 2 == 0 ? throughout(slot, count) : scenes(slot, count));
        }
        int purchases = Math.max(1, options / 8);
        int owned = Math.max(1, options / 30);
        List<Question.Rental> rentals = rentals(options - purchases - owned);
        List<Question.Purchase> offers = new ArrayList<>();
        for (int index = 0; index < purchases; index++) {
            offers.add(purchase(index));
        }
        List<Question.Owned> units = new ArrayList<>();
        for (int index = 0; index < owned; index++) {
            units.add(new Question.Owned(
                    "unit-" + index, Map.of(pick(slots), 1), index % 2 == 0 ? List.of() : List.of(someWeeks())));
        }
        return question("Film " + seed, needs, rentals, offers, units);
    }

    private Question question(
            String job,
            List<Question.Need> needs,
            List<Question.Rental> rentals,
            List<Question.Purchase> purchases,
            List<Question.Owned> owned) {
        long limit = 4_000L + 2_500L * purchases.size();
        return new Question(
                job,
                EUR,
                Percent.of("6"),
                purchases.isEmpty() ? Optional.empty() : Optional.of(euros(limit)),
                schedule,
                needs,
                rentals,
                purchases,
                owned,
                Map.of());
    }

    // --- the schedule

    private Schedule schedule() {
        int prep = Math.max(1, days / 14);
        int wrap = days > 20 ? 2 : 1;
        int shootingDaysAWeek = 5 + random.nextInt(2);
        int hiatusWeek = days > 100 ? 4 + random.nextInt(days / 14) : -1;
        List<Schedule.Span> spans = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            LocalDate date = MONDAY.plusDays(day);
            spans.add(new Schedule.Span(
                    DateRange.inclusive(date, date),
                    day < prep
                            ? DayUse.PREP
                            : day >= days - wrap ? DayUse.WRAP : use(day, shootingDaysAWeek, hiatusWeek)));
        }
        return new Schedule(spans);
    }

    private static DayUse use(int day, int shootingDaysAWeek, int hiatusWeek) {
        if (day / 7 == hiatusWeek) {
            return DayUse.DARK;
        }
        if (day % 7 < shootingDaysAWeek) {
            return DayUse.SHOOT;
        }
        return day % 7 == 6 && day / 7 % 3 == 2 ? DayUse.TRAVEL : DayUse.DARK;
    }

    private Question.Need throughout(int slot, int count) {
        return new Question.Need(slots.get(slot), count, Set.of(DayUse.PREP, DayUse.SHOOT), List.of());
    }

    /** Runs of two to twelve days with gaps of up to three weeks between. */
    private Question.Need scenes(int slot, int count) {
        List<DateRange> runs = new ArrayList<>();
        int day = random.nextInt(10);
        while (day < days) {
            int until = Math.min(days, day + 2 + random.nextInt(11));
            runs.add(new DateRange(schedule.dateOf(day), schedule.dateOf(until)));
            day = until + 1 + random.nextInt(21);
        }
        if (runs.isEmpty()) {
            runs.add(schedule.horizon());
        }
        return new Question.Need(slots.get(slot), count, Set.of(), runs);
    }

    private DateRange someWeeks() {
        int from = random.nextInt(Math.max(1, days / 2));
        return new DateRange(
                schedule.dateOf(from), schedule.dateOf(Math.min(days, from + 14 + random.nextInt(days / 2 + 1))));
    }

    // --- rentals

    /** Every slot's single lens from some supplier first, then sets and further singles by turns. */
    private List<Question.Rental> rentals(int wanted) {
        List<Question.Rental> rentals = new ArrayList<>();
        for (int index = 0; index < wanted; index++) {
            if (index < slots.size()) {
                rentals.add(rental("single-" + index, List.of(index), random.nextInt(4), 2));
            } else if (index % 2 == 0) {
                rentals.add(rental("set-" + index, someSlots(), random.nextInt(4), 1 + random.nextInt(2)));
            } else {
                rentals.add(rental(
                        "single-" + index,
                        List.of(random.nextInt(slots.size())),
                        random.nextInt(4),
                        1 + random.nextInt(2)));
            }
        }
        return rentals;
    }

    private List<Integer> someSlots() {
        List<Integer> all = new ArrayList<>();
        for (int slot = 0; slot < slots.size(); slot++) {
            all.add(slot);
        }
        Collections.shuffle(all, random);
        return all.subList(0, Math.min(slots.size(), 2 + random.nextInt(4)));
    }

    private Question.Rental rental(String id, List<Integer> covered, int supplier, int copies) {
        Map<String, Integer> covers = new LinkedHashMap<>();
        int rates = 0;
        for (int slot : covered) {
            covers.put(slots.get(slot), 1);
            rates += dayRates.get(slot);
        }
        double setRebate = covered.size() == 1 ? 1 : 0.65 + 0.2 * random.nextDouble();
        double dayRate = rates * setRebate * (0.85 + 0.3 * random.nextDouble());
        boolean everWanted = id.startsWith("single-") && copies == 2;
        boolean always = everWanted || random.nextInt(4) != 0;
        return new Question.Rental(
                id,
                "Supplier " + supplier,
                covers,
                copies,
                terms(dayRate, supplier),
                always ? List.of() : List.of(someWeeks()),
                Map.of());
    }

    private RentalTerms terms(double dayRate, int supplier) {
        double week = dayRate * (3 + supplier % 3);
        double fourWeeks = week * (2.5 + random.nextDouble());
        List<RentalTerms.Block> blocks = new ArrayList<>(List.of(
                new RentalTerms.Block(1, amount(dayRate), Optional.empty()),
                new RentalTerms.Block(7, amount(week), Optional.empty()),
                new RentalTerms.Block(28, amount(fourWeeks), Optional.empty())));
        if (supplier == 0) {
            blocks.add(new RentalTerms.Block(3, amount(dayRate * 1.5), Optional.of(DayOfWeek.FRIDAY)));
        }
        List<RentalTerms.AddOn> addOns = new ArrayList<>();
        if (random.nextInt(3) != 0) {
            addOns.add(new RentalTerms.AddOn(
                    "damage waiver",
                    Percent.of(String.valueOf(10 + random.nextInt(6))),
                    Set.of(RentalTerms.AddOn.HIRE)));
            addOns.add(new RentalTerms.AddOn(
                    "tax", Percent.of("20"), Set.of(RentalTerms.AddOn.HIRE, RentalTerms.AddOn.TRIP, "damage waiver")));
        }
        return new RentalTerms(
                blocks,
                supplier == 1 ? Optional.of(new RentalTerms.ExtraDay(7, amount(week / 7))) : Optional.empty(),
                supplier == 2 ? Map.of(DayUse.PREP, BigDecimal.ZERO, DayUse.TRAVEL, new BigDecimal("0.5")) : Map.of(),
                random.nextInt(3) == 0
                        ? List.of(
                                new RentalTerms.LongHire(10, Percent.of("10")),
                                new RentalTerms.LongHire(56, Percent.of("17.5")))
                        : List.of(),
                random.nextInt(5) == 0 ? amount(dayRate * 2) : Money.zero(EUR),
                random.nextInt(2) == 0 ? euros(30 + random.nextInt(90)) : Money.zero(EUR),
                addOns);
    }

    // --- purchases

    private Question.Purchase purchase(int index) {
        int slot = random.nextInt(slots.size());
        double price = dayRates.get(slot) * (25 + 15 * random.nextDouble());
        return new Question.Purchase(
                "buy-" + index,
                "Supplier 9",
                Map.of(slots.get(slot), 1),
                1 + random.nextInt(2),
                new PurchaseTerms(
                        amount(price),
                        Percent.of("8.875"),
                        List.of(new PurchaseTerms.Extra("case", euros(120))),
                        24 + 12 * random.nextInt(3),
                        new PurchaseTerms.Resale(
                                new PurchaseTerms.YearlyLoss(Percent.of(String.valueOf(8 + random.nextInt(14)))),
                                Percent.of("8")),
                        new PurchaseTerms.Holding(Percent.of("1.5"), Money.zero(EUR)),
                        Optional.of(new PurchaseTerms.Service(12, euros(180))),
                        Optional.empty()),
                schedule.dateOf(random.nextInt(3) == 0 ? days / 6 : 0));
    }

    // --- draws

    private static Money euros(long amount) {
        return Money.ofMinor(EUR, amount * 100);
    }

    private static Money amount(double amount) {
        return Money.of(EUR, BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP));
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
