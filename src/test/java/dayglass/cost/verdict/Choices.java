package dayglass.cost.verdict;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.ownership.Ownership;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** Choices for tests. */
public final class Choices {
    private Choices() {}

    public static Money euros(String amount) {
        return Money.of("EUR", amount);
    }

    public static RentalTerms days(String price) {
        return new RentalTerms(
                List.of(new RentalTerms.Block(1, euros(price), Optional.empty())),
                Optional.empty(),
                Map.of(),
                List.of(),
                euros("0"),
                euros("0"),
                List.of());
    }

    public static PurchaseTerms bought(String price, String resale, int months) {
        return new PurchaseTerms(
                euros(price),
                Percent.ZERO,
                List.of(),
                months,
                new PurchaseTerms.Resale(
                        new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(months, euros(resale)))),
                        Percent.ZERO),
                new PurchaseTerms.Holding(Percent.ZERO, euros("0")),
                Optional.empty(),
                Optional.empty());
    }

    /** Rented by the day and used for a price by the day, as textbooks have it. */
    public static RentOrBuy plain(PurchaseTerms terms, String rate, String perDayUsed, String rent) {
        return new RentOrBuy(
                Percent.of(rate),
                terms,
                new Ownership.Running(euros(perDayUsed), euros("0"), Optional.empty()),
                Optional.empty(),
                List.of(new JobKind("job", BigDecimal.TEN, 1, 0, 7)),
                List.of(days(rent)),
                Percent.ZERO);
    }

    /** A choice with everything in it. */
    public static RentOrBuy random(Random random) {
        Money price = cents(random, 2_000_000);
        int months = 6 + random.nextInt(60);
        PurchaseTerms terms = new PurchaseTerms(
                price,
                new Percent(BigDecimal.valueOf(random.nextInt(2_500), 2)),
                List.of(new PurchaseTerms.Extra("case", cents(random, 50_000))),
                months,
                new PurchaseTerms.Resale(
                        new PurchaseTerms.YearlyLoss(Percent.of(String.valueOf(random.nextInt(30) - 5))),
                        new Percent(BigDecimal.valueOf(random.nextInt(200), 1))),
                new PurchaseTerms.Holding(
                        new Percent(BigDecimal.valueOf(random.nextInt(300), 2)), cents(random, 50_000)),
                Optional.of(new PurchaseTerms.Service(1 + random.nextInt(24), cents(random, 50_000))),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new PurchaseTerms.Letting(
                                BigDecimal.valueOf(random.nextInt(60)), cents(random, 20_000), Percent.of("65"))));
        List<JobKind> jobs = new ArrayList<>();
        for (int kind = 0; kind <= random.nextInt(3); kind++) {
            jobs.add(new JobKind(
                    "kind " + kind,
                    BigDecimal.valueOf(1 + random.nextInt(120), 1),
                    1 + random.nextInt(40),
                    random.nextInt(3),
                    1 + random.nextInt(7)));
        }
        return new RentOrBuy(
                Percent.of(String.valueOf(random.nextInt(12))),
                terms,
                new Ownership.Running(
                        cents(random, 2_000),
                        cents(random, 1_000),
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(
                                        new Ownership.ServiceByDays(1 + random.nextInt(80), cents(random, 40_000)))),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new Ownership.Loan(
                                cents(random, 1_000_000),
                                Percent.of(String.valueOf(random.nextInt(12))),
                                1 + random.nextInt(90))),
                jobs,
                List.of(card(random), card(random)),
                Percent.of(String.valueOf(random.nextInt(10) - 3)));
    }

    private static RentalTerms card(Random random) {
        Money day = Money.ofMinor(Choices.euros("0").currency(), 2_000 + random.nextInt(30_000));
        return new RentalTerms(
                List.of(
                        new RentalTerms.Block(1, day, Optional.empty()),
                        new RentalTerms.Block(7, day.times(2 + random.nextInt(4)), Optional.empty())),
                Optional.empty(),
                random.nextBoolean() ? Map.of() : Map.of(DayUse.PREP, new BigDecimal("0.5")),
                random.nextBoolean() ? List.of() : List.of(new RentalTerms.LongHire(14, Percent.of("10"))),
                cents(random, 30_000),
                cents(random, 8_000),
                List.of(new RentalTerms.AddOn("tax", Percent.of("8.875"), Set.of("hire", "trip"))));
    }

    private static Money cents(Random random, int most) {
        return Money.ofMinor(Choices.euros("0").currency(), random.nextInt(most));
    }
}
