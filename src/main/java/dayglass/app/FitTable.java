package dayglass.app;

import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Frame;
import dayglass.optics.View;
import dayglass.optics.check.Fit;
import java.math.BigDecimal;
import java.util.List;

/** A fit in words and figures, for people. */
final class FitTable {
    private FitTable() {}

    static String of(FitQuestion question, Fit fit) {
        TextLayout lines = new TextLayout().sentence(0, headline(question, fit)).blank();
        lines.heading("Check", "to spare");
        fit.checks().forEach(finding -> check(lines, finding));
        lines.blank().heading("The picture", "");
        picture(lines, fit);
        lines.blank().heading("Mind", "");
        Fit.CAUTIONS.forEach(caution -> lines.sentence(2, caution));
        return lines.toString();
    }

    private static String headline(FitQuestion question, Fit fit) {
        List<BigDecimal> focals = question.lens().focals();
        String focal = focals.get(0).toPlainString()
                + (focals.size() > 1 ? " to " + focals.get(1).toPlainString() : "") + " mm";
        return focal + " T" + question.lens().tStop().toPlainString()
                + (fit.squeeze().compareTo(BigDecimal.ONE) > 0
                        ? ", squeeze " + fit.squeeze().toPlainString()
                        : "")
                + (question.attachment().isPresent() ? " with an attachment" : "") + ", on "
                + question.camera().width().toPlainString() + " x "
                + question.camera().height().toPlainString() + " mm for "
                + question.aspect().toPlainString() + ":1: "
                + fit.overall().words() + ".";
    }

    private static void check(TextLayout lines, Finding finding) {
        String unit = switch (finding.check()) {
            case "light" -> " stops";
            case "weight" -> " g";
            default -> " mm";
        };
        lines.row(
                2,
                finding.check() + ": " + finding.verdict().words(),
                finding.margin().map(margin -> margin.toPlainString() + unit).orElse(""));
        lines.sentence(6, finding.why());
    }

    private static void picture(TextLayout lines, Fit fit) {
        Frame used = fit.used();
        lines.row(2, "Used area", used.widthMm() + " x " + used.heightMm() + " mm");
        lines.row(2, "Share of the sensor", used.share().toPlainString());
        used.delivered().ifPresent(delivered -> {
            lines.row(2, "Frame, stretched sideways", size(delivered.stretched()));
            lines.row(2, "Frame, squashed from above", size(delivered.squashed()));
        });
        for (View view : fit.views()) {
            lines.row(2, "Field of view, across", view.horizontalDegrees() + " degrees");
            lines.row(2, "Field of view, upright", view.verticalDegrees() + " degrees");
            lines.row(2, "Sees as wide as a spherical lens of", view.sphericalFocal() + " mm");
        }
        lines.row(2, "Stop to set for an acceptably sharp picture", "T" + fit.workingStop());
        lines.row(2, "What that is worth in light", "T" + fit.workingStopInLight());
        fit.light().ifPresent(light -> {
            lines.row(2, "Stop that the light allows", "T" + light.lightAllows());
            light.luxNeeded().ifPresent(lux -> lines.row(2, "Light that would do", lux + " lx"));
        });
        fit.dioptre()
                .ifPresent(dioptre ->
                        lines.row(2, "Close-up dioptre", dioptre.from() + " to " + dioptre.to() + " dioptres"));
    }

    private static String size(Frame.Size size) {
        return size.wide() + " x " + size.high();
    }
}
