package dayglass.books.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Currency;
import dayglass.base.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExchangeTest {
    /**
     * Sources: the table of results in the documentation of java.math.RoundingMode, column HALF_UP, for the yen, whose minor
     * unit is 0 by ISO 4217; the documentation of java.math.BigDecimal for 1.005, which as a decimal is exact and a tie.
     */
    @ParameterizedTest
    @CsvSource({
        "55.00, JPY, 0.1, 6",
        "25.00, JPY, 0.1, 3",
        "16.00, JPY, 0.1, 2",
        "11.00, JPY, 0.1, 1",
        "-11.00, JPY, 0.1, -1",
        "-16.00, JPY, 0.1, -2",
        "-25.00, JPY, 0.1, -3",
        "-55.00, JPY, 0.1, -6",
        "1.00, USD, 1.005, 1.01",
        "-1.00, USD, 1.005, -1.01",
        "1.00, KWD, 1.0005, 1.001"
    })
    void whatIsConvertedIsRoundedHalfUpToTheMinorUnitOfTheBase(
            String euros, String base, BigDecimal rate, String converted) {
        Exchange exchange = new Exchange(rate, "an invented list", LocalDate.of(2027, 4, 5));
        assertEquals(Money.of(base, converted), exchange.convert(Money.of("EUR", euros), Currency.of(base)));
    }
}
