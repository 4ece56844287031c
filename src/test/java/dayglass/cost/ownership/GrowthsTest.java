package dayglass.cost.ownership;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Percent;
import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is remembered is what is worked out anew, to the last of its digits. */
class GrowthsTest {
    @Test
    void rememberedPowersAreTheVerySame() {
        Growths growths = new Growths();
        Random random = new Random(9);
        for (int round = 0; round < 400; round++) {
            Percent rate = new Percent(BigDecimal.valueOf(random.nextInt(8) * 125L - 300, 2));
            int months = random.nextInt(50);
            BigDecimal aYear = BigDecimal.ONE.add(rate.fraction());
            assertEquals(Growth.by(rate).over(months), growths.over(aYear, months), rate + " over " + months);
            assertArrayEquals(Growth.by(rate).presentByMonth(months), growths.presentByMonth(rate, months));
        }
    }
}
