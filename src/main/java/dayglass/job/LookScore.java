package dayglass.job;

import dayglass.catalogue.LensModel.Look;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How near a lens comes to the looks that are wanted: 100·(1 − Σ w·|grade − wanted| / 4Σw) over those that are graded.
 *
 * @param score 0 to 100; empty where none of the looks is graded or none is wanted
 * @param ungraded looks that are wanted and not graded
 */
public record LookScore(Optional<BigDecimal> score, List<Look> ungraded) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** From the least grade, 1, to the best, 5. */
    private static final BigDecimal WIDEST_GAP = BigDecimal.valueOf(4);

    public LookScore {
        ungraded = List.copyOf(ungraded);
    }

    public static LookScore of(Map<Look, Brief.Wish> wanted, Map<Look, Integer> grades) {
        BigDecimal gaps = BigDecimal.ZERO;
        BigDecimal weights = BigDecimal.ZERO;
        List<Look> ungraded = new ArrayList<>();
        for (Look look : Look.values()) {
            Brief.Wish wish = wanted.get(look);
            Integer grade = grades.get(look);
            if (wish != null && grade == null) {
                ungraded.add(look);
            } else if (wish != null && grade != null) {
                gaps = gaps.add(wish.weight().multiply(BigDecimal.valueOf(Math.abs(grade - wish.grade()))));
                weights = weights.add(wish.weight());
            }
        }
        if (weights.signum() == 0) {
            return new LookScore(Optional.empty(), ungraded);
        }
        BigDecimal lost = HUNDRED.multiply(gaps).divide(WIDEST_GAP.multiply(weights), MathContext.DECIMAL64);
        return new LookScore(Optional.of(HUNDRED.subtract(lost)), ungraded);
    }
}
