package dayglass.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PercentTest {
    /**
     * Ten per cent of ten times the number. Source: the table of results in the documentation of java.math.RoundingMode,
     * column HALF_UP; a tie goes away from zero.
     */
    @ParameterizedTest
    @CsvSource({"55, 6", "25, 3", "16, 2", "11, 1", "-11, -1", "-16, -2", "-25, -3", "-55, -6"})
    void aShareIsRoundedHalfUp(BigInteger minor, BigInteger share) {
        assertEquals(share, Percent.of("10").of(minor));
    }
}
