package dayglass.planning.ways;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModels;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.planning.KeptCosting;
import dayglass.planning.MakeCosting;
import dayglass.planning.OptionSources;
import dayglass.planning.ResolveJob;
import dayglass.planning.glass.JudgedGlass;
import dayglass.planning.glass.Judging;
import dayglass.planning.glass.PieceCover;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Judges one way of a job and costs it; the costing is kept, as that of a request that stands by itself. */
public final class CostWay {
    private static final int LONGEST_NAME = 200;

    private final OptionSources options;
    private final LensModels models;
    private final ResolveJob resolveJob;
    private final MakeCosting makeCosting;

    public CostWay(OptionSources options, LensModels models, ResolveJob resolveJob, MakeCosting makeCosting) {
        this.options = options;
        this.models = models;
        this.resolveJob = resolveJob;
        this.makeCosting = makeCosting;
    }

    /** What a sheet of a job starts from; where the job does not resolve by itself, no way is completed. */
    SheetBasis basis(Job job, Judging judging, List<Stored<Way.Id, Way>> ways) {
        WayParts parts = new WayParts(options, models, resolveJob.offeredTo(job));
        return new SheetBasis(
                job,
                judging,
                parts,
                resolveJob
                        .resolve(job, parts.offered())
                        .fold(question -> others(question, parts.known(job, ways), judging), problem -> Map.of()));
    }

    private static Map<String, PieceCover> others(
            Question question, Map<String, List<JudgedGlass.Models>> glass, Judging judging) {
        Map<String, Integer> wanted = WayQuestion.wanted(question);
        Map<String, PieceCover> others = new LinkedHashMap<>();
        new WayQuestion(question)
                .declared()
                .forEach((option, declared) -> others.put(
                        option,
                        PieceCover.of(
                                judging.piece(option, declared, glass.getOrDefault(option, List.of())),
                                judging.brief(),
                                wanted)));
        return others;
    }

    SheetRow row(Stored<Way.Id, Way> way, SheetBasis basis, StopSignal stop) {
        WayParts parts = basis.parts();
        return parts.of(way.facts())
                .then(pieces -> resolveJob
                        .resolve(
                                parts.considering(
                                        basis.job(), pieces, basis.others().keySet()),
                                parts.offered())
                        .map(question -> new JudgedWay(way, basis, pieces, named(question, way.facts()))))
                .fold(judged -> judged.costed(makeCosting, stop), problem -> unresolved(way, problem));
    }

    private static SheetRow unresolved(Stored<Way.Id, Way> way, Problem problem) {
        return new SheetRow(
                way.id(), SheetRow.Described.of(way), SheetRow.Picture.NONE, SheetRow.Costs.NONE, problem.detail());
    }

    /** From how many days on buying pays, by the question of a row's costing. */
    Payback payback(Stored<KeptCosting.Id, KeptCosting> costing, StopSignal stop) {
        return Payback.of(OwnPart.of(costing.facts().question()), stop);
    }

    private static Question named(Question question, Way way) {
        String name = question.job() + ", " + way.name();
        String shortened = name.codePointCount(0, name.length()) <= LONGEST_NAME
                ? name
                : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME));
        return new Question(
                shortened,
                question.currency(),
                question.discountRate(),
                question.cashLimit(),
                question.schedule(),
                question.needs(),
                question.rentals(),
                question.purchases(),
                question.owned(),
                question.stock());
    }
}
