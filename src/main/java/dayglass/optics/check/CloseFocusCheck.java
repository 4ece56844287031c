package dayglass.optics.check;

import dayglass.optics.Dioptre;
import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.Optional;

/** The nearest subject against how near the lens can focus; a close-up dioptre helps where it cannot. */
public final class CloseFocusCheck {
    private CloseFocusCheck() {}

    /**
     * What the check finds.
     *
     * @param dioptre what is needed, where one is
     */
    public static Optional<Finding> of(FitQuestion question, Optional<Dioptre> dioptre) {
        return question.set()
                .closestSubjectM()
                .flatMap(subject -> question.closeFocusM().map(closest -> judge(subject, closest, dioptre)));
    }

    private static Finding judge(BigDecimal subject, BigDecimal closest, Optional<Dioptre> dioptre) {
        String near = "It focuses to " + closest.toPlainString() + " m and the nearest subject is at "
                + subject.toPlainString() + " m";
        return dioptre.map(strength -> new Finding(
                        "close focus",
                        Verdict.FITS_WITH_CARE,
                        Optional.empty(),
                        near + ": a close-up dioptre of " + strength.from() + " to " + strength.to()
                                + " dioptres is needed, measured from the dioptre."))
                .orElseGet(() -> new Finding("close focus", Verdict.FITS, Optional.empty(), near + "."));
    }
}
