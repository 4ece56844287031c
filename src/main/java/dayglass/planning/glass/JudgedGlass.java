package dayglass.planning.glass;

import dayglass.catalogue.Glass;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.LensModel.Kind;
import dayglass.catalogue.LensModel.Look;
import dayglass.job.Brief;
import dayglass.job.LookScore;
import dayglass.optics.Finding;
import dayglass.optics.FitQuestion;
import dayglass.optics.Mounts;
import dayglass.optics.Verdict;
import dayglass.optics.check.Fit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Some glass of one kind against a brief.
 *
 * @param focals the focal length, or the two ends of a zoom, of the taking lens; empty where it is not known
 * @param fit empty where its record lacks something
 * @param lacks what it lacks, in phrases
 * @param remarks what must be said of it though no check asks
 */
public record JudgedGlass(
        String name,
        int count,
        List<BigDecimal> focals,
        Optional<Fit> fit,
        List<String> lacks,
        List<String> remarks,
        LookScore look) {
    private static final Set<Kind> LENSES =
            Set.of(Kind.SPHERICAL_PRIME, Kind.SPHERICAL_ZOOM, Kind.ANAMORPHIC_PRIME, Kind.ANAMORPHIC_ZOOM);

    public JudgedGlass {
        focals = List.copyOf(focals);
        lacks = List.copyOf(lacks);
        remarks = List.copyOf(remarks);
    }

    /**
     * The models of some glass.
     *
     * @param front an attachment, or a filter, which takes light and adds no squeeze
     */
    public record Models(LensModel lens, Optional<LensModel> front, int count) {
        /** Whether it is a lens, and not something that goes with one. */
        boolean isLens() {
            return LENSES.contains(lens.kind());
        }

        private boolean filtered() {
            return front.filter(model -> model.kind() == Kind.EFFECT_FILTER).isPresent();
        }

        private Glass glass() {
            return new Glass(lens, filtered() ? Optional.empty() : front);
        }

        private String name() {
            return filtered()
                    ? glass().name() + " with "
                            + front.map(filter -> filter.fullName()).orElse("")
                    : glass().name();
        }

        /** What stands in front decides a look where it was graded. */
        private Map<Look, Integer> grades() {
            Map<Look, Integer> grades = new EnumMap<>(Look.class);
            grades.putAll(lens.grades().byLook());
            front.ifPresent(model -> grades.putAll(model.grades().byLook()));
            return grades;
        }
    }

    public static JudgedGlass of(Models models, Brief brief, Mounts mounts) {
        Brief.Picture picture = models.filtered()
                ? brief.picture()
                        .filtered(models.front()
                                .flatMap(filter -> filter.record().lightLossStops())
                                .orElse(BigDecimal.ZERO))
                : brief.picture();
        FitQuestion.Setting setting = picture.with(mounts);
        List<String> lacks = new ArrayList<>(models.glass().lacks(mounts));
        if (!models.isLens()) {
            lacks.add(models.lens().fullName() + " is no lens but a "
                    + models.lens().kind().word() + ": name the lens that it works on");
        }
        Optional<Fit> fit = lacks.isEmpty() ? models.glass().on(setting).map(Fit::of) : Optional.empty();
        List<BigDecimal> focals = new ArrayList<>();
        models.lens().record().focalMm().ifPresent(focals::add);
        models.lens().record().longestFocalMm().ifPresent(focals::add);
        return new JudgedGlass(
                models.name(),
                models.count(),
                focals,
                fit,
                lacks,
                remarks(models, brief, fit),
                LookScore.of(brief.looks(), models.grades()));
    }

    private static List<String> remarks(Models models, Brief brief, Optional<Fit> fit) {
        List<String> remarks = new ArrayList<>();
        if (models.filtered()) {
            remarks.add("The filter imitates the look; it widens nothing.");
        }
        brief.squeeze()
                .flatMap(wanted -> fit.filter(each -> each.squeeze().compareTo(wanted) != 0)
                        .map(each -> "Its squeeze is " + each.squeeze().toPlainString() + ", the brief wants "
                                + wanted.toPlainString() + "."))
                .ifPresent(remarks::add);
        return remarks;
    }

    public Optional<Verdict> verdict() {
        return fit.map(Fit::overall);
    }

    /** Whether it may serve at all. */
    boolean usable() {
        return verdict().filter(verdict -> verdict != Verdict.DOES_NOT_FIT).isPresent();
    }

    /** Whether its focal length is that of a slot, within the brief's tolerance. */
    boolean isFor(BigDecimal wanted, Brief brief) {
        return !focals.isEmpty() && brief.serves(focals.get(0), focals.get(focals.size() - 1), wanted);
    }

    /** Whether it has a range of focal lengths. */
    boolean isZoom() {
        return focals.size() > 1 && focals.get(0).compareTo(focals.get(1)) < 0;
    }

    /** How far its focal length is from a slot's; 0 inside of a zoom's range. */
    BigDecimal distance(BigDecimal wanted) {
        BigDecimal shortest = focals.get(0);
        BigDecimal longest = focals.get(focals.size() - 1);
        return shortest.subtract(wanted).max(wanted.subtract(longest)).max(BigDecimal.ZERO);
    }

    /** Why it is refused or wants care, each a sentence with its name. */
    public List<String> reasons() {
        if (fit.isEmpty()) {
            return List.of(name + " cannot be judged: " + String.join("; ", lacks) + ".");
        }
        return fit.get().checks().stream()
                .filter(finding -> finding.verdict() == fit.get().overall())
                .filter(finding -> finding.verdict() != Verdict.FITS)
                .map(Finding::why)
                .map(why -> name + ": " + why)
                .toList();
    }
}
