package dayglass.web.page.fit;

import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Frame;
import dayglass.optics.View;
import dayglass.optics.check.Fit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** One fit as the page shows it. */
public record FitView(
        String name,
        String overall,
        List<Check> checks,
        List<Figure> figures,
        FramePicture frame,
        List<ViewPicture> views,
        StopPicture stops) {
    private static final int HUNDRED = 100;

    public FitView {
        checks = List.copyOf(checks);
        figures = List.copyOf(figures);
        views = List.copyOf(views);
    }

    /** One check with its sentence. */
    public record Check(String name, String verdict, String margin, String why) {}

    /** A number with its unit. */
    public record Figure(String name, String value) {}

    static FitView of(String name, FitQuestion question) {
        Fit fit = Fit.of(question);
        FitQuestion plain = spherical(question);
        List<View> asSpherical = Fit.of(plain).views();
        List<ViewPicture> views = new ArrayList<>();
        for (int at = 0; at < fit.views().size(); at++) {
            views.add(ViewPicture.of(
                    fit.views().get(at),
                    asSpherical.get(at),
                    question.lens().focals().get(at).toPlainString()));
        }
        return new FitView(
                name,
                fit.overall().words(),
                fit.checks().stream().map(FitView::check).toList(),
                figures(question, fit),
                FramePicture.of(question, fit.used()),
                views,
                StopPicture.of(question, fit));
    }

    /** The same lens without squeeze and attachment. */
    private static FitQuestion spherical(FitQuestion question) {
        FitQuestion.Lens lens = question.lens();
        return new FitQuestion(
                question.camera(),
                question.aspect(),
                question.light(),
                question.set(),
                new FitQuestion.Lens(
                        lens.focals(),
                        lens.tStop(),
                        BigDecimal.ONE,
                        lens.imageCircle(),
                        lens.mounts(),
                        lens.closeFocusM(),
                        lens.frontMm(),
                        lens.weightG(),
                        lens.closeDownStops()),
                java.util.Optional.empty(),
                question.mounts());
    }

    private static Check check(Finding finding) {
        return new Check(
                finding.check(),
                finding.verdict().words(),
                finding.margin().map(BigDecimal::toPlainString).orElse(""),
                finding.why());
    }

    private static List<Figure> figures(FitQuestion question, Fit fit) {
        List<Figure> figures = new ArrayList<>();
        Frame used = fit.used();
        figures.add(new Figure("squeeze", fit.squeeze().toPlainString() + "×"));
        figures.add(new Figure(
                "used area",
                used.widthMm().toPlainString() + " × " + used.heightMm().toPlainString() + " mm, "
                        + used.share()
                                .multiply(BigDecimal.valueOf(HUNDRED))
                                .stripTrailingZeros()
                                .toPlainString()
                        + " % of the sensor"));
        used.delivered().ifPresent(delivered -> {
            figures.add(new Figure("delivered, stretched", size(delivered.stretched())));
            figures.add(new Figure("delivered, squashed", size(delivered.squashed())));
        });
        for (int at = 0; at < fit.views().size(); at++) {
            View view = fit.views().get(at);
            String at50 = fit.views().size() == 1
                    ? ""
                    : " at " + question.lens().focals().get(at).toPlainString() + " mm";
            figures.add(new Figure(
                    "field of view" + at50,
                    view.horizontalDegrees().toPlainString() + "° × "
                            + view.verticalDegrees().toPlainString() + "°"));
            figures.add(new Figure(
                    "as wide as a spherical lens of" + at50,
                    view.sphericalFocal().toPlainString() + " mm on this camera"));
        }
        figures.add(new Figure("working stop", "T" + fit.workingStop().toPlainString()));
        figures.add(
                new Figure("its worth in light", "T" + fit.workingStopInLight().toPlainString()));
        fit.light().ifPresent(light -> {
            figures.add(new Figure("the light allows", "T" + light.lightAllows().toPlainString()));
            figures.add(new Figure("to spare", light.marginStops().toPlainString() + " stops"));
            light.luxNeeded()
                    .ifPresent(lux -> figures.add(new Figure("lux that would do", lux.toPlainString() + " lx")));
        });
        fit.dioptre()
                .ifPresent(dioptre -> figures.add(new Figure(
                        "dioptre",
                        "+" + dioptre.from().toPlainString() + " to +"
                                + dioptre.to().toPlainString())));
        return figures;
    }

    private static String size(Frame.Size size) {
        return size.wide().toPlainString() + " × " + size.high().toPlainString();
    }
}
