package dayglass.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;
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

    /**
     * Against another table of ISO 4217, the Java platform's: whatever it lists with a minor unit is known here with the
     * same decimals, but for what has been withdrawn (from memory; the last are HRK 2023, CUC, SLL, ZWL, ANG and BGN).
     */
    @Test
    void nothingThatThePlatformListsIsMissingButWhatWasWithdrawn() {
        Set<String> withdrawn =
                Set.of(("ADP AFA ANG ATS AYM AZM BEF BGL BGN BYB BYR CSD CUC CYP DEM EEK ESP FIM FRF GHC GRD GWP "
                                + "HRK IEP ITL LTL LUF LVL MGF MRO MTL MZM NLG PTE ROL RUR SDD SIT SKK SLL SRG STD TMM TPE TRL "
                                + "USS VEB VEF YUM ZMK ZWD ZWL ZWN ZWR")
                        .split(" ", -1));
        for (java.util.Currency listed : java.util.Currency.getAvailableCurrencies()) {
            String code = listed.getCurrencyCode();
            if (listed.getDefaultFractionDigits() >= 0 && !withdrawn.contains(code)) {
                assertEquals(
                        Optional.of(listed.getDefaultFractionDigits()),
                        Currency.find(code).map(Currency::decimals),
                        code);
            }
        }
        withdrawn.forEach(code -> assertEquals(Optional.empty(), Currency.find(code), code));
    }
}
