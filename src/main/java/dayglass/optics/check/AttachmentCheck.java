package dayglass.optics.check;

import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.FitQuestion.Attachment;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The taking lens's focal length, or both ends of a zoom, against what a front attachment works with. */
public final class AttachmentCheck {
    private AttachmentCheck() {}

    public static Optional<Finding> of(FitQuestion question) {
        return question.attachment().map(front -> judge(front, question.lens().focals()));
    }

    private static Finding judge(Attachment front, List<BigDecimal> focals) {
        String range = range(front);
        boolean tooShort = front.minFocal().isPresent()
                && focals.get(0).compareTo(front.minFocal().get()) < 0;
        boolean tooLong = front.maxFocal().isPresent()
                && focals.get(focals.size() - 1).compareTo(front.maxFocal().get()) > 0;
        if (tooShort || tooLong) {
            return finding(
                    Verdict.DOES_NOT_FIT,
                    "The taking lens is too " + (tooShort ? "short" : "long") + ": the attachment works with " + range
                            + ".");
        }
        return front.dual()
                ? finding(
                        Verdict.FITS_WITH_CARE,
                        "The attachment works with " + range + ", but two barrels are pulled together for focus.")
                : finding(Verdict.FITS, "The attachment works with " + range + " and has one barrel to pull.");
    }

    private static String range(Attachment front) {
        String from =
                front.minFocal().map(mm -> "from " + mm.toPlainString() + " mm").orElse("");
        String to = front.maxFocal()
                .map(mm -> "up to " + mm.toPlainString() + " mm")
                .orElse("");
        return from.isEmpty() && to.isEmpty() ? "any focal length" : "lenses " + (from + " " + to).strip();
    }

    private static Finding finding(Verdict verdict, String why) {
        return new Finding("attachment", verdict, Optional.empty(), why);
    }
}
