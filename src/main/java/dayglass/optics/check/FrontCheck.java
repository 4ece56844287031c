package dayglass.optics.check;

import dayglass.optics.Figures;
import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.Optional;

/** The front diameter against the matte box. */
public final class FrontCheck {
    private FrontCheck() {}

    public static Optional<Finding> of(FitQuestion question) {
        return question.frontMm().flatMap(front -> question.set().matteBoxMm().map(box -> judge(front, box)));
    }

    private static Finding judge(BigDecimal frontMm, BigDecimal matteBoxMm) {
        BigDecimal margin = Figures.difference(matteBoxMm.subtract(frontMm));
        String words = "The front is " + Figures.plain(frontMm).toPlainString() + " mm and the matte box takes "
                + Figures.plain(matteBoxMm).toPlainString() + " mm";
        int room = matteBoxMm.compareTo(frontMm);
        if (room < 0) {
            return finding(Verdict.DOES_NOT_FIT, margin, words + ": too large.");
        }
        return room > 0
                ? finding(Verdict.FITS_WITH_CARE, margin, words + ": it needs a ring between.")
                : finding(Verdict.FITS, margin, words + ".");
    }

    private static Finding finding(Verdict verdict, BigDecimal margin, String why) {
        return new Finding("front", verdict, Optional.of(margin), why);
    }
}
