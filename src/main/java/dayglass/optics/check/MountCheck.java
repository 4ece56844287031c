package dayglass.optics.check;

import dayglass.optics.Figures;
import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Verdict;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The lens's mount against the camera's: the same, one that the lens can be changed to, or one whose flange stands far
 * enough off for an adapter.
 */
public final class MountCheck {
    /** Thinner than this no adapter is made; common practice. */
    private static final BigDecimal THINNEST_ADAPTER_MM = BigDecimal.ONE;

    private MountCheck() {}

    public static Finding of(FitQuestion question) {
        String wanted = question.camera().mount();
        List<String> mounts = question.lens().mounts();
        if (mounts.get(0).equals(wanted)) {
            return finding(Verdict.FITS, "The lens has the camera's mount, " + wanted + ".");
        }
        if (mounts.contains(wanted)) {
            return finding(
                    Verdict.FITS_WITH_CARE,
                    "The lens has its " + mounts.get(0) + " mount on and can be changed to the camera's, " + wanted
                            + ".");
        }
        String furthest = mounts.stream()
                .max(Comparator.comparing(mount -> flange(question, mount)))
                .orElseThrow();
        BigDecimal room = flange(question, furthest).subtract(flange(question, wanted));
        return room.compareTo(THINNEST_ADAPTER_MM) >= 0
                ? finding(
                        Verdict.FITS_WITH_CARE,
                        "An adapter " + Figures.difference(room) + " mm thick can carry the lens's " + furthest
                                + " mount on the camera's " + wanted + "; check throat and rear clearance by hand.")
                : finding(
                        Verdict.DOES_NOT_FIT,
                        "No adapter fits between: the lens's " + furthest + " flange stands "
                                + Figures.plain(flange(question, furthest)) + " mm off the sensor, the camera's "
                                + wanted + " already " + Figures.plain(flange(question, wanted)) + " mm.");
    }

    private static BigDecimal flange(FitQuestion question, String mount) {
        return question.mounts()
                .flangeMm(mount)
                .orElseThrow(() -> new IllegalArgumentException("no mount is called " + mount));
    }

    private static Finding finding(Verdict verdict, String why) {
        return new Finding("mount", verdict, Optional.empty(), why);
    }
}
