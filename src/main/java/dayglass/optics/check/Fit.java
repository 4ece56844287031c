package dayglass.optics.check;

import dayglass.optics.Dioptre;
import dayglass.optics.Exposure;
import dayglass.optics.Figures;
import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Frame;
import dayglass.optics.Verdict;
import dayglass.optics.View;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every figure and verdict of one lens on one camera. Figures are rounded as they are told; verdicts are decided before
 * any rounding.
 *
 * @param overall the worst of the checks
 * @param views one, or of a zoom two, the short end first
 * @param workingStop the stop to set, at which the picture is acceptably sharp
 * @param workingStopInLight what that is worth in light behind an attachment
 * @param dioptre in dioptres, from the attachment's or lens's own close focus
 * @param checks those that could be made, in a fixed order
 */
public record Fit(
        Verdict overall,
        BigDecimal squeeze,
        Frame used,
        List<View> views,
        BigDecimal workingStop,
        BigDecimal workingStopInLight,
        Optional<LightFigures> light,
        Optional<Dioptre> dioptre,
        List<Finding> checks) {
    /** What everybody should read who takes such glass out; figures do not replace a test. */
    public static final List<String> CAUTIONS = List.of(
            "Heavy glass needs its own support and a second pair of hands.",
            "Anything rigged over people, on a vehicle or an arm needs a qualified grip, a secondary safety attachment"
                    + " and the local rules.",
            "Never point a lens at the sun or a laser and look through it.",
            "Some old glass holds thorium, and old glass can carry mould.",
            "A home-made filter must be fixed so that it cannot fall.",
            "Figures are an aid to planning: test the actual lens on the actual camera.");

    public Fit {
        views = List.copyOf(views);
        checks = List.copyOf(checks);
    }

    /** Where the light was asked for; {@code luxNeeded} where it is too dark. */
    public record LightFigures(BigDecimal lightAllows, BigDecimal marginStops, Optional<BigDecimal> luxNeeded) {}

    /** Judges the lens. */
    public static Fit of(FitQuestion question) {
        Frame used = Frame.of(question.camera(), question.squeeze(), question.aspect());
        Optional<Exposure> exposure = Exposure.of(question);
        Optional<Dioptre> dioptre = dioptre(question);
        double working = question.lens().tStop().doubleValue() * stops(question.closeDownStops());
        List<Finding> checks = Stream.of(
                        CoverageCheck.of(question, used),
                        Optional.of(MountCheck.of(question)),
                        exposure.map(LightCheck::of),
                        CloseFocusCheck.of(question, dioptre),
                        AttachmentCheck.of(question),
                        WeightCheck.of(question),
                        FrontCheck.of(question))
                .flatMap(Optional::stream)
                .toList();
        return new Fit(
                checks.stream().map(Finding::verdict).reduce(Verdict.FITS, Verdict::orWorse),
                Figures.plain(question.squeeze()),
                used,
                question.lens().focals().stream()
                        .map(focal -> View.of(question, used, focal))
                        .toList(),
                Figures.telling(working),
                Figures.telling(working * stops(question.lightLossStops())),
                exposure.map(light -> new LightFigures(
                        light.lightAllows(question.lens().tStop()), light.marginStops(), light.luxNeeded())),
                dioptre,
                checks);
    }

    /** Where the subject comes nearer than the lens can focus. */
    private static Optional<Dioptre> dioptre(FitQuestion question) {
        return question.set()
                .closestSubjectM()
                .flatMap(subject -> question.closeFocusM()
                        .filter(closest -> subject.compareTo(closest) < 0)
                        .map(closest -> Dioptre.of(subject, closest)));
    }

    /** The factor on an f-number or T-stop that so many stops make. */
    private static double stops(BigDecimal stops) {
        return Math.pow(2, stops.doubleValue() / 2);
    }
}
