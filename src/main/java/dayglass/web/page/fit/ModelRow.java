package dayglass.web.page.fit;

import dayglass.base.Stored;
import dayglass.catalogue.Glass;
import dayglass.catalogue.LensModel;
import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Verdict;
import dayglass.optics.check.Fit;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A model of the shelf on the camera that was asked about.
 *
 * @param verdict empty where its record lacks something
 * @param why what decides it, or what is lacking
 * @param asWide the spherical lens that sees as wide
 */
public record ModelRow(long id, String name, Optional<Verdict> verdict, String why, String squeeze, String asWide) {
    private static final Set<LensModel.Kind> LENSES = EnumSet.of(
            LensModel.Kind.SPHERICAL_PRIME,
            LensModel.Kind.SPHERICAL_ZOOM,
            LensModel.Kind.ANAMORPHIC_PRIME,
            LensModel.Kind.ANAMORPHIC_ZOOM);

    /** Those that fit first, what cannot be judged last; then by name. */
    static final Comparator<ModelRow> BEST_FIRST = Comparator.comparing(
                    (ModelRow row) -> row.verdict().isEmpty())
            .thenComparing(row -> row.verdict().orElse(Verdict.DOES_NOT_FIT))
            .thenComparing(ModelRow::name);

    static boolean isLens(LensModel model) {
        return LENSES.contains(model.kind());
    }

    static ModelRow of(Stored<LensModel.Id, LensModel> model, FitQuestion.Setting setting) {
        Glass glass = new Glass(model.facts(), Optional.empty());
        return glass.on(setting)
                .map(question -> judged(model.id(), glass, question))
                .orElseGet(() -> new ModelRow(
                        model.id().number(),
                        glass.name(),
                        Optional.empty(),
                        String.join("; ", glass.lacks(setting.mounts())),
                        model.facts().record().squeeze().toPlainString(),
                        ""));
    }

    private static ModelRow judged(LensModel.Id id, Glass glass, FitQuestion question) {
        Fit fit = Fit.of(question);
        List<Finding> deciding = fit.checks().stream()
                .filter(check -> check.verdict() == fit.overall() && fit.overall() != Verdict.FITS)
                .toList();
        return new ModelRow(
                id.number(),
                glass.name(),
                Optional.of(fit.overall()),
                deciding.stream().map(Finding::why).collect(Collectors.joining(" ")),
                fit.squeeze().toPlainString(),
                fit.views().stream()
                                .map(view -> view.sphericalFocal().toPlainString())
                                .collect(Collectors.joining(" to "))
                        + " mm");
    }
}
