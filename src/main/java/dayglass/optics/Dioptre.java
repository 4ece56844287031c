package dayglass.optics;

import java.math.BigDecimal;

/** The strengths of close-up dioptre that focus on a subject nearer than the lens can, measured from the dioptre. */
public record Dioptre(BigDecimal from, BigDecimal to) {
    /**
     * Between 1/d − 1/c and 1/d.
     *
     * @param subjectM d, in metres, less than {@code closeFocusM}, c
     */
    public static Dioptre of(BigDecimal subjectM, BigDecimal closeFocusM) {
        Ratio to = new Ratio(BigDecimal.ONE, subjectM);
        Ratio from = new Ratio(closeFocusM.subtract(subjectM), subjectM.multiply(closeFocusM));
        return new Dioptre(Figures.telling(from), Figures.telling(to));
    }
}
