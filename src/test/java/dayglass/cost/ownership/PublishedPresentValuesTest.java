package dayglass.cost.ownership;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Percent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Published present values, their flows laid on a purchase: equal monthly payments as storage or letting, yearly costs
 * as service (a term of a month more, since none falls due at the end), a last sum as resale. A nominal rate a month
 * becomes the yearly rate that compounds to it; amounts are scaled up where the source gives many decimals.
 */
class PublishedPresentValuesTest {
    private static final MathContext DIGITS = new MathContext(60);

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/dayglass/cost/ownership/published-present-values.csv",
            numLinesToSkip = 1,
            maxCharsPerColumn = 400)
    void netCostIsThePublishedPresentValue(ArgumentsAccessor row) {
        PurchaseTerms terms = new PurchaseTerms(
                euros(row, 1),
                Percent.ZERO,
                List.of(new PurchaseTerms.Extra("paid at once", euros(row, 2))),
                row.getInteger(3),
                new PurchaseTerms.Resale(
                        new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(row.getInteger(3), euros(row, 8)))),
                        Percent.ZERO),
                new PurchaseTerms.Holding(Percent.ZERO, euros(row, 4)),
                row.getInteger(5) == 0
                        ? Optional.empty()
                        : Optional.of(new PurchaseTerms.Service(row.getInteger(5), euros(row, 6))),
                Optional.of(new PurchaseTerms.Letting(BigDecimal.valueOf(12), euros(row, 7), Percent.of("100"))));
        Percent rate = row.getString(10) == null ? compounded(row.getString(9)) : Percent.of(row.getString(10));
        Money net = NetCost.of(terms, rate);
        BigDecimal off = net.major().subtract(row.get(11, BigDecimal.class)).abs();
        assertTrue(
                off.compareTo(row.get(12, BigDecimal.class)) <= 0,
                row.getString(0) + " is " + net + ", off by " + off + "; " + row.getString(13));
        assertEquals(PlainNetCost.of(terms, rate), net, row.getString(0));
    }

    private static Money euros(ArgumentsAccessor row, int column) {
        return Money.of("EUR", row.getString(column));
    }

    /** The yearly rate of twelve months at a rate such as {@code 0.08/12}. */
    private static Percent compounded(String monthly) {
        String[] sides = monthly.split("/", -1);
        BigDecimal rate = new BigDecimal(sides[0]);
        if (sides.length == 2) {
            rate = rate.divide(new BigDecimal(sides[1]), DIGITS);
        }
        return new Percent(BigDecimal.ONE
                .add(rate)
                .pow(12, DIGITS)
                .subtract(BigDecimal.ONE)
                .movePointRight(2));
    }
}
