package dayglass.cost.verdict;

import dayglass.base.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Where owning and renting cost the same as one thing is moved and all else stays: nowhere, once or several times.
 *
 * @param curve what both cost over the range that was looked at; empty where no curve is drawn
 * @param none why there is no crossing; empty text where there is one
 */
public record BreakEven(List<Crossing> crossings, List<Point> curve, String none) {
    private static final int DECIMALS_OF_PLACE = 3;

    public BreakEven {
        crossings = List.copyOf(crossings);
        curve = List.copyOf(curve);
    }

    /** What owning and renting cost at present value at one place. */
    public record Point(BigDecimal place, Money owning, Money renting) {
        /** Above zero where owning is cheaper. */
        public Money saving() {
            return renting.minus(owning);
        }
    }

    /**
     * A crossing between two neighbours, both evaluated; alike where the two cost exactly the same there.
     *
     * @param at on the straight line between both, rounded to three decimals
     * @param owningIsCheaperBeyond whether owning is the cheaper way beyond it
     */
    public record Crossing(Point before, Point after, BigDecimal at, boolean owningIsCheaperBeyond) {
        static Crossing between(Point before, Point after) {
            int beyond = after.saving().signum();
            return between(
                    before, after, beyond > 0 || (beyond == 0 && before.saving().signum() < 0));
        }

        private static Crossing between(Point before, Point after, boolean owningIsCheaperBeyond) {
            BigDecimal from = before.saving().major().abs();
            BigDecimal sum = from.add(after.saving().major().abs());
            BigDecimal step = after.place().subtract(before.place());
            BigDecimal at = sum.signum() == 0
                    ? before.place()
                    : before.place().add(step.multiply(from).divide(sum, 20, RoundingMode.HALF_UP));
            return new Crossing(
                    before, after, at.setScale(DECIMALS_OF_PLACE, RoundingMode.HALF_UP), owningIsCheaperBeyond);
        }
    }

    /** All crossings along a curve. Where the two cost the same over a run of places, its first counts. */
    static BreakEven along(List<Point> curve) {
        List<Crossing> crossings = new ArrayList<>();
        for (int at = 0; at < curve.size(); at++) {
            Point here = curve.get(at);
            int sign = here.saving().signum();
            int before = at == 0 ? 1 : curve.get(at - 1).saving().signum();
            if (sign == 0 && (at == 0 || before != 0)) {
                crossings.add(Crossing.between(here, here, owningIsCheaperAfter(curve, at)));
            } else if (at > 0 && sign * before < 0) {
                crossings.add(Crossing.between(curve.get(at - 1), here));
            }
        }
        return of(crossings, curve);
    }

    /** What costs the same at a place is told by what comes next; where nothing does, by what came before. */
    private static boolean owningIsCheaperAfter(List<Point> curve, int at) {
        for (Point next : curve.subList(at + 1, curve.size())) {
            if (next.saving().signum() != 0) {
                return next.saving().signum() > 0;
            }
        }
        return at > 0 && curve.get(at - 1).saving().signum() < 0;
    }

    private static BreakEven of(List<Crossing> crossings, List<Point> curve) {
        boolean owning = curve.get(0).saving().signum() > 0;
        String none = owning ? "owning is cheaper all along" : "renting is cheaper all along";
        return new BreakEven(crossings, curve, crossings.isEmpty() ? none : "");
    }
}
