package dayglass.optics.check;

import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.Optional;

/** Lens and attachment against what the rig carries; from nine tenths of that on with care. */
public final class WeightCheck {
    private WeightCheck() {}

    public static Optional<Finding> of(FitQuestion question) {
        return question.weightG().flatMap(weight -> question.set().payloadG().map(payload -> judge(weight, payload)));
    }

    private static Finding judge(int weightG, int payloadG) {
        String words = "It weighs " + weightG + " g and the rig carries " + payloadG + " g";
        BigDecimal margin = BigDecimal.valueOf((long) payloadG - weightG);
        if (weightG > payloadG) {
            return finding(Verdict.DOES_NOT_FIT, margin, words + ": too heavy.");
        }
        return 10L * weightG >= 9L * payloadG
                ? finding(Verdict.FITS_WITH_CARE, margin, words + ": nearly all of it; balance it with care.")
                : finding(Verdict.FITS, margin, words + ".");
    }

    private static Finding finding(Verdict verdict, BigDecimal margin, String why) {
        return new Finding("weight", verdict, Optional.of(margin), why);
    }
}
