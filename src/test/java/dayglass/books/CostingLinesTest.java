package dayglass.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.books.AmountColumn.Purpose;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CostingLinesTest {
    private static final CostingLines MIXED = CostingFixtures.mixed().lines(Map.of("fell-set", " 2310-04 "));

    @Test
    void payableLinesStandByDateAndOwnedUnitsAreNotAmongThem() {
        assertEquals(
                List.of("fell-set", "buy-40", "tarn-pair"),
                MIXED.payable().stream().map(PayableLine::option).toList());
    }

    @Test
    void aRentalAddsAcrossWithItsDiscountBelowZero() {
        PayableLine pair = MIXED.payable().get(2);
        assertEquals(
                "-20.57",
                pair.amount(AmountColumn.of(Purpose.DISCOUNT)).orElseThrow().amount());
        // 205.72 - 20.57 + 14.85 + 10.00
        assertEquals("210.00", pair.net().amount());
        assertEquals("228.66", pair.total().amount());
        assertEquals("2 x 1 extra day at 102.86 from 2027-04-10", pair.blocks());
    }

    @Test
    void aPurchaseIsSplitIntoPriceExtrasAndTax() {
        PayableLine purchase = MIXED.payable().get(1);
        assertEquals("8310.00", purchase.net().amount());
        assertEquals(
                "710.00",
                purchase.amount(AmountColumn.of(Purpose.PURCHASE_TAX))
                        .orElseThrow()
                        .amount());
        assertEquals("9020.00", purchase.total().amount());
        assertEquals(purchase.date(), purchase.service().from());
        assertEquals(1, purchase.service().days());
    }

    @Test
    void columnsAreTheUnionOfNamesInTheOrderMet() {
        assertEquals(
                List.of(
                        "hire",
                        "discount",
                        "raised to minimum",
                        "trip",
                        "price",
                        "extra: case",
                        "purchase tax",
                        "add-on: damage waiver",
                        "add-on: sales tax",
                        "add-on: stamp"),
                MIXED.amountColumns().stream().map(AmountColumn::heading).toList());
    }

    @Test
    void slotsStandInTheOrderOfTheNeedsAndOnlyWhereServed() {
        assertEquals(List.of("40 mm", "100 mm"), MIXED.payable().get(0).slots());
        assertEquals(List.of("40 mm"), MIXED.payable().get(1).slots());
        assertEquals(List.of("100 mm"), MIXED.payable().get(2).slots());
    }

    @Test
    void theCodeIsTheUsersOwn() {
        assertEquals("2310-04", MIXED.payable().get(0).costCode());
        assertEquals("", MIXED.payable().get(1).costCode());
    }

    @Test
    void payableAndWeighedEachAgreeWithTheAnswer() {
        Answer answer = CostingFixtures.mixed().answer();
        BigInteger cash = answer.cash().stream()
                .map(payment -> payment.amount().minor())
                .reduce(BigInteger.ZERO, BigInteger::add);
        BigInteger columns = MIXED.amountColumns().stream()
                .map(column -> MIXED.columnTotal(column).minor())
                .reduce(BigInteger.ZERO, BigInteger::add);
        BigInteger choices = answer.choices().stream()
                .map(choice -> choice instanceof Choice.Buy buy ? buy.outlay() : choice.total())
                .map(Money::minor)
                .reduce(BigInteger.ZERO, BigInteger::add);
        assertEquals(BigInteger.valueOf(1_004_866), MIXED.payableTotal().minor());
        assertEquals(MIXED.payableTotal().minor(), cash);
        assertEquals(MIXED.payableTotal().minor(), columns);
        assertEquals(MIXED.payableTotal().minor(), choices);
        assertEquals(BigInteger.valueOf(412_866), MIXED.weighedTotal().minor());
        assertEquals(answer.total(), MIXED.weighedTotal());
    }

    @Test
    void twoExtrasOfOneNameShareTheirColumn() {
        Currency euro = Currency.of("EUR");
        Choice buy = new Choice.Buy(
                "buy-40",
                "Fell Optical",
                CostingFixtures.FIRST_DAY,
                Money.of("EUR", "115.00"),
                Money.of("EUR", "-5.00"),
                true);
        CostingFixtures.Costed costed = new CostingFixtures.Costed(
                CostingFixtures.question(
                        euro,
                        List.of("40 mm"),
                        List.of(CostingFixtures.purchaseOf(
                                "buy-40",
                                "100.00",
                                "0",
                                List.of(CostingFixtures.extra("cap", "5.00"), CostingFixtures.extra("cap", "10.00")),
                                euro)),
                        List.of()),
                CostingFixtures.answer(euro, List.of(buy), List.of()));
        CostingLines lines = costed.lines(Map.of());
        assertEquals(
                "15.00",
                lines.columnTotal(new AmountColumn(Purpose.EXTRA, "cap")).amount());
        assertEquals("-5.00", lines.weighedTotal().amount());
        assertTrue(lines.weighed().get(0).spare());
        assertEquals(List.of(), lines.payable().get(0).slots());
    }

    @Test
    void linesThatDoNotAddUpToTheAnswerAreRefused() {
        CostingFixtures.Costed good = CostingFixtures.mixed();
        Answer answer = good.answer();
        Answer short1 = new Answer(
                answer.total(),
                answer.lowerBound(),
                answer.optimal(),
                answer.comparison(),
                answer.choices(),
                answer.coverage(),
                answer.cash().subList(1, answer.cash().size()),
                answer.explanation());
        assertThrows(
                IllegalStateException.class,
                () -> CostingLines.of(CostingFixtures.REFERENCE, good.question(), short1, CostCodes.NONE));
    }

    @Test
    void codesAreCheckedByTheIdOfTheirOption() {
        CostCodes codes = new CostCodes(Map.of("a/b~c", "1", "unit-3", "x".repeat(201), "buy-40", "two\nlines"));
        assertEquals(
                List.of("/costCodes/a~1b~0c", "/costCodes/buy-40", "/costCodes/unit-3"),
                codes.faults(CostingFixtures.mixed().question(), "/costCodes").stream()
                        .map(dayglass.base.Fault::pointer)
                        .toList());
        assertEquals(
                List.of(),
                new CostCodes(Map.of("unit-3", "\uD83C\uDF9E".repeat(200), "gone", " "))
                        .faults(CostingFixtures.mixed().question(), ""));
    }
}
