package dayglass.wire.fit;

import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Frame;
import dayglass.optics.View;
import dayglass.optics.check.Fit;
import dayglass.wire.Json;
import java.util.List;
import java.util.Optional;

/** What a fit comes to, as it is answered. */
public final class FitWriter {
    private FitWriter() {}

    public static Json write(Fit fit) {
        Json.Members members = Json.object()
                .put("overall", fit.overall().words())
                .put("squeeze", fit.squeeze().toPlainString())
                .put("used", used(fit.used()));
        fit.used().delivered().ifPresent(delivered -> members.put("delivered", delivered(delivered)));
        List<Json> views = fit.views().stream().map(FitWriter::view).toList();
        members.put("view", views.size() == 1 ? views.get(0) : Json.list(views))
                .put("workingStop", fit.workingStop().toPlainString())
                .put("workingStopInLight", fit.workingStopInLight().toPlainString());
        fit.light().ifPresent(light -> {
            members.put("lightAllows", light.lightAllows().toPlainString())
                    .put("lightMarginStops", light.marginStops().toPlainString());
            light.luxNeeded().ifPresent(lux -> members.put("luxNeeded", lux.toPlainString()));
        });
        fit.dioptre()
                .ifPresent(dioptre -> members.put(
                        "dioptre",
                        Json.object()
                                .put("from", dioptre.from().toPlainString())
                                .put("to", dioptre.to().toPlainString())
                                .build()));
        return members.put(
                        "checks",
                        Json.list(fit.checks().stream().map(FitWriter::check).toList()))
                .put("cautions", Json.texts(Fit.CAUTIONS))
                .build();
    }

    private static Json used(Frame used) {
        Json.Members members = Json.object()
                .put("width", used.widthMm().toPlainString())
                .put("height", used.heightMm().toPlainString())
                .put("share", used.share().toPlainString());
        Optional<FitQuestion.Photosites> photosites = used.photosites();
        photosites.ifPresent(
                count -> members.put("photositesWide", count.wide()).put("photositesHigh", count.high()));
        return members.build();
    }

    private static Json delivered(Frame.Delivered delivered) {
        return Json.object()
                .put("stretched", size(delivered.stretched()))
                .put("squashed", size(delivered.squashed()))
                .build();
    }

    private static Json size(Frame.Size size) {
        return Json.list(List.of(
                Json.number(size.wide().longValueExact()),
                Json.number(size.high().longValueExact())));
    }

    private static Json view(View view) {
        return Json.object()
                .put("horizontalDegrees", view.horizontalDegrees().toPlainString())
                .put("verticalDegrees", view.verticalDegrees().toPlainString())
                .put("sphericalFocal", view.sphericalFocal().toPlainString())
                .build();
    }

    private static Json check(Finding finding) {
        Json.Members members = Json.object()
                .put("check", finding.check())
                .put("verdict", finding.verdict().words());
        finding.margin().ifPresent(margin -> members.put("margin", margin.toPlainString()));
        return members.put("why", finding.why()).build();
    }
}
