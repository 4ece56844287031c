package dayglass.inventory.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Money;
import dayglass.cost.ownership.Growths;
import dayglass.cost.ownership.OwnSales;
import dayglass.cost.verdict.Choices;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValueTodayTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 6, 30);

    private static Unit unit(@Nullable String bought, @Nullable String price, Unit.@Nullable Departure gone) {
        Unit plain = Unit.serving("Q-1", Unit.Use.NONE);
        return new Unit(
                plain.tag(),
                plain.model(),
                plain.serial(),
                new Holding.Owned(
                        Optional.ofNullable(bought).map(LocalDate::parse),
                        Optional.ofNullable(price).map(Choices::euros),
                        "",
                        ""),
                plain.value(),
                plain.papers(),
                plain.accessories(),
                plain.use(),
                Optional.ofNullable(gone));
    }

    private static Optional<ValueToday> value(Unit unit, OwnSales.Sale... sales) {
        return ValueToday.of(
                unit, List.of(sales), new ValueToday.Basis(Footing.USUAL.lossPerYear(), TODAY, new Growths()));
    }

    /** 9 per cent a year: 10000 is 9100 after one year, 8281 after two, 7535.71 after three. */
    @ParameterizedTest
    @CsvSource({
        "2026-06-30, 12, 9100.00, 8281.00",
        "2025-06-30, 24, 8281.00, 7535.71",
        "2026-07-01, 11, 9171.80, 8346.34",
        "2027-06-30, 0, 10000.00, 9100.00"
    })
    void withoutOwnSalesItLosesAShareAYear(String bought, int months, String today, String inAYear) {
        ValueToday value = value(unit(bought, "10000.00", null)).orElseThrow();
        assertEquals(months, value.months());
        assertEquals(Choices.euros(today), value.today());
        assertEquals(Choices.euros(inAYear), value.inAYear());
        assertEquals(0, value.sales());
    }

    /** Two sales after two years brought 80 and 90 per cent of the price; between them and the start it is a line. */
    @Test
    void ownSalesOfTheModelGoBeforeTheYearlyLoss() {
        ValueToday value = value(
                        unit("2026-06-30", "10000.00", null),
                        new OwnSales.Sale(24, Choices.euros("5000"), Choices.euros("4000")),
                        new OwnSales.Sale(24, Choices.euros("6000"), Choices.euros("5400")),
                        new OwnSales.Sale(24, Money.of("JPY", "600000"), Money.of("JPY", "60000")))
                .orElseThrow();
        assertEquals(2, value.sales());
        assertEquals(Choices.euros("9250.00"), value.today());
        assertEquals(Choices.euros("8500.00"), value.inAYear());
    }

    @Test
    void withoutPriceOrDayNobodyKnows() {
        assertEquals(Optional.empty(), value(unit(null, "10000.00", null)));
        assertEquals(Optional.empty(), value(unit("2025-01-01", null, null)));
        assertEquals(Optional.empty(), value(unit("2027-07-01", "10000.00", null)));
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "2025-01-10, 5000, sold, 4000, 25",
                "2027-02-01, 5000, sold, 4000, 1", // within the first month
                "2025-01-10, 5000, lost, 4000, none",
                "2025-01-10, none, sold, 4000, none",
                "none, 5000, sold, 4000, none",
                "2025-01-10, 5000, sold, none, none"
            })
    void aSaleIsOneWhereAllIsRecorded(
            @Nullable String bought,
            @Nullable String price,
            String how,
            @Nullable String had,
            @Nullable Integer months) {
        Unit gone = unit(
                bought,
                price,
                new Unit.Departure(
                        LocalDate.of(2027, 2, 20), how, Optional.ofNullable(had).map(Choices::euros)));
        assertEquals(Optional.ofNullable(months), ValueToday.sale(gone).map(OwnSales.Sale::months));
    }
}
