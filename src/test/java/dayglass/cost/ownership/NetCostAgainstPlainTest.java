package dayglass.cost.ownership;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Net cost over the whole range of what the contract allows, against month-by-month arithmetic at 90 digits. */
class NetCostAgainstPlainTest {
    private static final List<String> CURRENCIES = List.of("EUR", "JPY", "BHD", "CLF");

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void netCostIsExactToTheMinorUnit(int batch) {
        Random random = new Random(77 + batch);
        for (int index = 0; index < 60; index++) {
            PurchaseTerms terms = terms(random);
            Percent rate = percent(random, random.nextBoolean() ? 30 : 1_000);
            assertEquals(PlainNetCost.of(terms, rate), NetCost.of(terms, rate), terms + " at " + rate);
            assertEquals(PlainNetCost.outlay(terms), NetCost.outlay(terms), terms::toString);
        }
    }

    /**
     * A tie goes away from zero, on either side of it. Worked by hand: 0.015 a year is 0.00125 a month and half a cent
     * in four months.
     */
    @Test
    void aTieGoesAwayFromZero() {
        Money none = Money.of("EUR", "0");
        PurchaseTerms cost = plain(4, new PurchaseTerms.Holding(Percent.of("1.5"), none), "1", Optional.empty());
        assertEquals(Money.of("EUR", "0.01"), NetCost.of(cost, Percent.ZERO));
        PurchaseTerms income = plain(
                4,
                new PurchaseTerms.Holding(Percent.ZERO, none),
                "1",
                Optional.of(new PurchaseTerms.Letting(
                        new BigDecimal("0.015"), Money.of("EUR", "1.00"), Percent.of("100"))));
        assertEquals(Money.of("EUR", "-0.01"), NetCost.of(income, Percent.ZERO));
    }

    /**
     * A tie that only a root makes. Worked by hand: at a loss of 19 % a year 21 is worth 21 x 0.9 = 18.9 in half a year,
     * and 17.955 less 5 %; 52.5 + 0.0945 - 3.888 - 17.955 = 30.7515 in a currency of three decimals.
     */
    @Test
    void aTieBehindARootGoesAwayFromZero() {
        Currency dinar = Currency.of("BHD");
        PurchaseTerms terms = new PurchaseTerms(
                Money.of("BHD", "21"),
                Percent.of("150"),
                List.of(),
                6,
                new PurchaseTerms.Resale(new PurchaseTerms.YearlyLoss(Percent.of("19")), Percent.of("5")),
                new PurchaseTerms.Holding(Percent.of("0.9"), Money.zero(dinar)),
                Optional.empty(),
                Optional.of(new PurchaseTerms.Letting(new BigDecimal("5.4"), Money.of("BHD", "4"), Percent.of("36"))));
        assertEquals(Money.of("BHD", "30.752"), NetCost.of(terms, Percent.ZERO));
        assertEquals(Money.of("BHD", "30.752"), PlainNetCost.of(terms, Percent.ZERO));
    }

    /** Sold for what was paid, so that only the running costs and the income are left. */
    private static PurchaseTerms plain(
            int months, PurchaseTerms.Holding holding, String price, Optional<PurchaseTerms.Letting> letting) {
        return new PurchaseTerms(
                Money.of("EUR", price),
                Percent.ZERO,
                List.of(),
                months,
                new PurchaseTerms.Resale(new PurchaseTerms.YearlyLoss(Percent.ZERO), Percent.ZERO),
                holding,
                Optional.empty(),
                letting);
    }

    static PurchaseTerms terms(Random random) {
        Currency currency = Currency.of(CURRENCIES.get(random.nextInt(CURRENCIES.size())));
        Money price = amount(currency, random);
        int months = 1 + random.nextInt(random.nextBoolean() ? 60 : 600);
        return new PurchaseTerms(
                price,
                percent(random, 100),
                List.of(new PurchaseTerms.Extra("case", amount(currency, random))),
                months,
                new PurchaseTerms.Resale(resale(currency, months, random), percent(random, 100)),
                new PurchaseTerms.Holding(
                        percent(random, 10),
                        amount(currency, random),
                        random.nextInt(4) == 0 ? Optional.of(amount(currency, random)) : Optional.empty()),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new PurchaseTerms.Service(1 + random.nextInt(24), amount(currency, random))),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new PurchaseTerms.Letting(
                                percent(random, 366).value(), amount(currency, random), percent(random, 100))));
    }

    private static PurchaseTerms.ResaleValue resale(Currency currency, int months, Random random) {
        if (random.nextInt(3) != 0) {
            int yearly = random.nextInt(10) == 0 ? (random.nextBoolean() ? 100 : -100) : random.nextInt(60) - 20;
            return new PurchaseTerms.YearlyLoss(Percent.of(yearly + (yearly % 100 == 0 ? "" : ".0625")));
        }
        List<PurchaseTerms.Point> points = new ArrayList<>();
        points.add(new PurchaseTerms.Point(months + random.nextInt(13), amount(currency, random)));
        if (months > 1) {
            points.add(new PurchaseTerms.Point(random.nextInt(months), amount(currency, random)));
        }
        return new PurchaseTerms.Points(points);
    }

    private static Money amount(Currency currency, Random random) {
        int bits = 1 + random.nextInt(56);
        BigInteger minor = new BigInteger(bits, random);
        assertTrue(minor.signum() >= 0);
        return new Money(currency, minor);
    }

    static Percent percent(Random random, int most) {
        int decimals = random.nextInt(11);
        BigDecimal value = BigDecimal.valueOf(random.nextInt(most));
        if (decimals > 0) {
            value = value.add(new BigDecimal(new BigInteger(33, random).mod(BigInteger.TEN.pow(decimals)), decimals));
        }
        return new Percent(value);
    }
}
