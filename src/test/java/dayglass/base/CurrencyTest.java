package dayglass.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class CurrencyTest {
    @ParameterizedTest(name = "{1}: {0}")
    @CsvFileSource(resources = "/dayglass/base/minor-units.csv", numLinesToSkip = 1)
    void decimalsAreTheStandards(String codes, String decimals, String source) {
        for (String code : codes.split(" ", -1)) {
            assertEquals(
                    decimals,
                    Currency.find(code).map(found -> "" + found.decimals()).orElse("none"),
                    code + ", " + source);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"eur", "Eur", "EU", "EURO", "", "DEM", "ZZZ"})
    void whatIsNoCodeInUseIsNotFound(String code) {
        assertEquals(Optional.empty(), Currency.find(code));
    }

    @Test
    void aFoundCurrencyBearsItsCode() {
        assertEquals("JPY", Currency.of("JPY").code());
    }
}
