package dayglass.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SharesTest {
    @ParameterizedTest(name = "{0} by {1}")
    @CsvFileSource(resources = "/dayglass/base/allocations.csv", numLinesToSkip = 1)
    void partsAreThePublishedOnes(String amount, String weights, String parts, String source) {
        assertEquals(numbers(parts), Shares.byWeight(new BigInteger(amount), numbers(weights)), source);
    }

    @Test
    void partsOfAnySignAddUpAndDifferByOneAtMost() {
        for (int amount = -30; amount <= 30; amount++) {
            for (int count = 1; count <= 8; count++) {
                List<BigInteger> parts = Shares.evenly(BigInteger.valueOf(amount), count);
                assertEquals(BigInteger.valueOf(amount), parts.stream().reduce(BigInteger.ZERO, BigInteger::add));
                assertTrue(
                        Collections.max(parts).subtract(Collections.min(parts)).compareTo(BigInteger.ONE) <= 0);
                assertEquals(parts.stream().sorted(Collections.reverseOrder()).toList(), parts, "the larger first");
            }
        }
    }

    @Test
    void weightsThatSayNothingAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Shares.byWeight(BigInteger.TEN, numbers("0 0")));
        assertThrows(IllegalArgumentException.class, () -> Shares.byWeight(BigInteger.TEN, numbers("1 -1 5")));
        assertThrows(IllegalArgumentException.class, () -> Shares.byWeight(BigInteger.TEN, List.of()));
    }

    private static List<BigInteger> numbers(String text) {
        return Stream.of(text.split(" ", -1)).map(BigInteger::new).toList();
    }
}
