package dayglass.planning.ways;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModels;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.job.Brief;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.optics.Mounts;
import dayglass.planning.KeptCosting;
import dayglass.planning.MakeCosting;
import dayglass.planning.OptionSources;
import dayglass.planning.Priced;
import dayglass.planning.ResolveJob;
import dayglass.wire.costing.AnswerReader;
import dayglass.wire.costing.CostingProblems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Judges one way of a job and costs it; the costing is kept, as that of a request that stands by itself. */
public final class CostWay {
    private static final int LONGEST_NAME = 200;
    private static final int MOST_SLOTS = 64;

    private final WayParts parts;
    private final ResolveJob resolveJob;
    private final MakeCosting makeCosting;

    public CostWay(OptionSources options, LensModels models, ResolveJob resolveJob, MakeCosting makeCosting) {
        this.parts = new WayParts(options, models);
        this.resolveJob = resolveJob;
        this.makeCosting = makeCosting;
    }

    /**
     * What every row of a sheet starts from.
     *
     * @param own ids of the options that the job considers itself, which may complete a way
     */
    public record Basis(Job job, Brief brief, Mounts mounts, Set<String> own) {}

    /** What a sheet of a job starts from; where the job does not resolve by itself, no way is completed. */
    Basis basis(Job job, Brief brief, Mounts mounts) {
        Set<String> own = resolveJob
                .resolve(job)
                .fold(question -> new WayQuestion(question).declared().keySet(), problem -> Set.of());
        return new Basis(job, brief, mounts, own);
    }

    SheetRow row(Stored<Way.Id, Way> way, Basis basis, StopSignal stop) {
        return parts.of(way.facts())
                .then(pieces -> resolveJob
                        .resolve(parts.considering(basis.job(), pieces, basis.own()))
                        .map(question -> new Row(way, basis, pieces, named(question, way.facts()))))
                .fold(row -> row.costed(stop), problem -> unresolved(way, problem));
    }

    private static SheetRow unresolved(Stored<Way.Id, Way> way, Problem problem) {
        return new SheetRow(
                way.id(), described(way), SheetRow.Picture.NONE, Optional.empty(), Optional.empty(), problem.detail());
    }

    private static SheetRow.Described described(Stored<Way.Id, Way> way) {
        return new SheetRow.Described(way.facts().name(), way.facts().note());
    }

    /** From how many days on buying pays, by the question of a row's costing. */
    Payback payback(Stored<KeptCosting.Id, KeptCosting> costing, SheetRow.Cost cost, StopSignal stop) {
        return Payback.of(costing.facts().question(), cost.comparison(), stop);
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

    /** One way with all that it names looked up. */
    private final class Row {
        private final Stored<Way.Id, Way> way;
        private final Basis basis;
        private final WayQuestion question;
        private final List<JudgedGlass> glass = new ArrayList<>();
        private final List<PieceCover> covers = new ArrayList<>();
        private final List<String> remarks = new ArrayList<>();

        Row(Stored<Way.Id, Way> way, Basis basis, List<WayParts.Named> pieces, Question resolved) {
            this.way = way;
            this.basis = basis;
            this.question = new WayQuestion(resolved);
            Map<String, Integer> wanted = WayQuestion.wanted(resolved);
            Map<String, Map<String, Integer>> declared = question.declared();
            for (WayParts.Named piece : pieces) {
                List<JudgedGlass> judged = piece.glass().stream()
                        .map(models -> JudgedGlass.of(models, basis.brief(), basis.mounts()))
                        .toList();
                glass.addAll(judged);
                Map<String, Integer> own = declared.get(piece.option());
                if (own == null) {
                    remarks.add(piece.option() + " can serve on no day of the job.");
                } else if (judged.isEmpty()) {
                    covers.add(PieceCover.atItsWord(piece.option(), own));
                } else {
                    covers.add(PieceCover.of(piece.option(), judged, basis.brief(), wanted));
                }
            }
            covers.stream()
                    .filter(piece -> piece.covers().isEmpty())
                    .forEach(piece -> remarks.add(piece.option() + " serves no slot of the job."));
        }

        SheetRow costed(StopSignal stop) {
            return price(stop)
                    .fold(kept -> row(Optional.of(cost(kept)), ""), problem -> row(Optional.empty(), problem));
        }

        /** The way alone, or where that leaves something uncovered, with others completing it. */
        private Result price(StopSignal stop) {
            Map<String, Map<String, Integer>> own = new LinkedHashMap<>();
            covers.forEach(piece -> own.put(piece.option(), piece.covers()));
            if (own.values().stream().allMatch(Map::isEmpty)) {
                return Result.failed("Nothing of this way serves a slot of the job, so there is nothing to cost.");
            }
            Outcome<Priced> alone = makeCosting.ofQuestion(question.alone(own), Optional.empty(), stop);
            List<Costing.Shortage> shortages = alone.fold(
                    priced -> priced.fold(kept -> List.of(), none -> none.why().shortages(), out -> List.of()),
                    problem -> List.of());
            if (shortages.isEmpty()) {
                return Result.of(alone);
            }
            Set<String> others = new LinkedHashSet<>(basis.own());
            others.removeAll(own.keySet());
            Question completed = question.completed(own, shortages, others);
            if (WayQuestion.wanted(completed).size() > MOST_SLOTS) {
                return Result.failed("Completed, it asks for more than " + MOST_SLOTS + " slots, which is too many.");
            }
            return Result.of(makeCosting.ofQuestion(completed, Optional.empty(), stop));
        }

        private SheetRow row(Optional<SheetRow.Cost> cost, String problem) {
            List<SlotReport> slots = question.slots().stream()
                    .map(slot -> SlotReport.of(slot, basis.brief(), covers, glass))
                    .toList();
            return new SheetRow(
                    way.id(),
                    described(way),
                    new SheetRow.Picture(slots, glass, remarks),
                    cost,
                    Optional.empty(),
                    problem);
        }

        private SheetRow.Cost cost(Stored<KeptCosting.Id, KeptCosting> kept) {
            Answer answer = AnswerReader.read(kept.facts().answer().json());
            Money payable = answer.payable();
            return new SheetRow.Cost(
                    kept.id(),
                    answer.comparison(),
                    answer.optimal(),
                    payable,
                    basis.brief()
                            .budget()
                            .filter(budget -> budget.currency().equals(payable.currency()))
                            .map(budget -> payable.compareTo(budget) <= 0),
                    completions(answer));
        }
    }

    private static List<SheetRow.Completion> completions(Answer answer) {
        Map<String, Set<String>> options = new LinkedHashMap<>();
        Map<String, Integer> days = new LinkedHashMap<>();
        for (Answer.Coverage each : answer.coverage()) {
            if (each.slot().endsWith(WayQuestion.COMPLETED)) {
                options.computeIfAbsent(each.slot(), slot -> new TreeSet<>()).addAll(each.by());
                days.merge(each.slot(), 1, Integer::sum);
            }
        }
        List<SheetRow.Completion> completions = new ArrayList<>();
        options.forEach((slot, by) -> completions.add(new SheetRow.Completion(
                slot.substring(0, slot.length() - WayQuestion.COMPLETED.length()),
                days.getOrDefault(slot, 0),
                List.copyOf(by))));
        return completions;
    }

    /** A kept costing, or why there is none. */
    private record Result(Optional<Stored<KeptCosting.Id, KeptCosting>> kept, String problem) {
        static Result failed(String problem) {
            return new Result(Optional.empty(), problem);
        }

        static Result of(Outcome<Priced> outcome) {
            return outcome.fold(
                    priced -> priced.fold(
                            kept -> new Result(Optional.of(kept.costing()), ""),
                            none -> failed(whyNot(none.why())),
                            out -> failed("It was stopped before any plan was found; one may exist.")),
                    problem -> failed(problem.detail()));
        }

        private static String whyNot(Costing.Impossible why) {
            Set<String> slots = new LinkedHashSet<>();
            why.shortages()
                    .forEach(shortage ->
                            slots.add(shortage.slot().replace(WayQuestion.COMPLETED, "") + " on " + shortage.date()));
            return slots.isEmpty()
                    ? CostingProblems.why(why)
                    : "Neither this way nor the job's other options cover "
                            + slots.stream().limit(3).collect(java.util.stream.Collectors.joining(", "))
                            + (slots.size() > 3 ? " and " + (slots.size() - 3) + " more." : ".");
        }

        <R> R fold(
                java.util.function.Function<Stored<KeptCosting.Id, KeptCosting>, R> done,
                java.util.function.Function<String, R> failed) {
            return kept.map(done).orElseGet(() -> failed.apply(problem));
        }
    }
}
