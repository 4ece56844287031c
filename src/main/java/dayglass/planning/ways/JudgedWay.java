package dayglass.planning.ways;

import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.job.Way;
import dayglass.planning.KeptCosting;
import dayglass.planning.MakeCosting;
import dayglass.planning.Priced;
import dayglass.planning.glass.JudgedGlass;
import dayglass.planning.glass.PieceCover;
import dayglass.planning.glass.SlotReport;
import dayglass.wire.costing.AnswerReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One way with all that it names looked up and judged, ready to be costed. */
final class JudgedWay {
    private static final int MOST_SLOTS = 64;

    private final Stored<Way.Id, Way> way;
    private final SheetBasis basis;
    private final WayQuestion question;
    private final Set<JudgedGlass> glass = new LinkedHashSet<>();
    private final List<PieceCover> covers = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /** @param resolved the job with every option that the way or its completion may take */
    JudgedWay(Stored<Way.Id, Way> way, SheetBasis basis, List<WayParts.Named> pieces, Question resolved) {
        this.way = way;
        this.basis = basis;
        this.question = new WayQuestion(resolved);
        Map<String, Integer> wanted = WayQuestion.wanted(resolved);
        Map<String, Map<String, Integer>> declared = question.declared();
        for (WayParts.Named piece : pieces) {
            Map<String, Integer> own = declared.get(piece.option());
            if (own == null) {
                remarks.add(piece.option()
                        + " is free on no day of the job: booked, away, damaged or overdue for service.");
            } else {
                PieceCover.Piece known = basis.judging().piece(piece.option(), own, piece.glass());
                glass.addAll(known.glass());
                covers.add(PieceCover.of(known, basis.brief(), wanted));
                question.daysOf(piece.option())
                        .ifPresent(days -> remarks.add(piece.option() + " is there only " + days + "."));
            }
        }
        covers.stream()
                .filter(piece -> piece.covers().isEmpty())
                .forEach(piece -> remarks.add(piece.option() + " serves no slot of the job."));
        remarks.addAll(0, ofGlass());
    }

    /** What must be said of the glass, each remark once, with what it holds for where that is not all. */
    private List<String> ofGlass() {
        Map<String, List<String>> names = new LinkedHashMap<>();
        glass.forEach(each -> each.remarks()
                .forEach(remark ->
                        names.computeIfAbsent(remark, text -> new ArrayList<>()).add(each.name())));
        return names.entrySet().stream()
                .map(each -> each.getValue().size() == glass.size()
                        ? each.getKey()
                        : String.join(", ", each.getValue()) + ": " + each.getKey())
                .toList();
    }

    SheetRow costed(MakeCosting makeCosting, StopSignal stop) {
        Map<String, Map<String, Integer>> own = new LinkedHashMap<>();
        covers.forEach(piece -> own.put(piece.option(), piece.covers()));
        if (own.values().stream().allMatch(Map::isEmpty)) {
            return row(
                    Optional.empty(),
                    Optional.empty(),
                    "Nothing of this way serves a slot of the job, so there is nothing to cost.");
        }
        Question alone = question.alone(own);
        Outcome<Priced> outcome = makeCosting.ofQuestion(alone, Optional.empty(), stop);
        List<Costing.Shortage> shortages = shortages(outcome);
        if (shortages.isEmpty()) {
            return row(alone, outcome, stop);
        }
        Question completed = question.completed(own, shortages, others(own));
        if (WayQuestion.wanted(completed).size() > MOST_SLOTS) {
            return row(
                    Optional.empty(),
                    Optional.empty(),
                    "Completed, it asks for more than " + MOST_SLOTS + " slots, which is too many.");
        }
        remarks.addAll(refusals(shortages, own));
        return row(completed, makeCosting.ofQuestion(completed, Optional.empty(), stop), stop);
    }

    private static List<Costing.Shortage> shortages(Outcome<Priced> outcome) {
        return outcome.fold(
                priced -> priced.fold(kept -> List.of(), none -> none.why().shortages(), out -> List.of()),
                problem -> List.of());
    }

    private Map<String, Map<String, Integer>> others(Map<String, Map<String, Integer>> own) {
        Map<String, Map<String, Integer>> others = new LinkedHashMap<>();
        basis.others().forEach((option, cover) -> others.put(option, cover.covers()));
        others.keySet().removeAll(own.keySet());
        return others;
    }

    /** Which of the job's other options do not complete what lacks, as their glass does not give the picture. */
    private List<String> refusals(List<Costing.Shortage> shortages, Map<String, Map<String, Integer>> own) {
        List<String> refusals = new ArrayList<>();
        List<String> lacking =
                shortages.stream().map(Costing.Shortage::slot).distinct().toList();
        basis.others().forEach((option, cover) -> {
            if (!own.containsKey(option)) {
                lacking.stream()
                        .filter(slot -> !cover.covers().containsKey(slot))
                        .forEach(slot -> cover.refused().getOrDefault(slot, Set.of()).stream()
                                .flatMap(refused -> refused.reasons().stream())
                                .forEach(why -> refusals.add(option + " does not complete " + slot + ": " + why)));
            }
        });
        return refusals;
    }

    private SheetRow row(Question asked, Outcome<Priced> outcome, StopSignal stop) {
        return outcome.fold(
                priced -> priced.fold(
                        kept -> {
                            SheetRow.Cost cost = cost(kept.costing());
                            boolean told = cost.comparison().buyOnly().total().isPresent();
                            return row(Optional.of(cost), told ? Optional.empty() : Bought.of(asked, stop), "");
                        },
                        none -> row(
                                Optional.empty(),
                                none.why().cashLimitOnly() ? Bought.of(asked, stop) : Optional.empty(),
                                NoPlan.why(none.why())),
                        out -> row(
                                Optional.empty(),
                                Optional.empty(),
                                "It was stopped before any plan was found; one may exist.")),
                problem -> row(Optional.empty(), Optional.empty(), problem.detail()));
    }

    private SheetRow row(Optional<SheetRow.Cost> cost, Optional<Bought> bought, String problem) {
        List<SlotReport> slots = question.slots().stream()
                .map(slot -> SlotReport.of(slot, basis.brief(), covers, glass))
                .toList();
        return new SheetRow(
                way.id(),
                SheetRow.Described.of(way),
                new SheetRow.Picture(slots, List.copyOf(glass), serving(), remarks),
                new SheetRow.Costs(cost, bought, Optional.empty()),
                problem);
    }

    private Set<JudgedGlass> serving() {
        return covers.stream()
                .flatMap(piece -> piece.by().values().stream())
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
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
                Taken.of(answer),
                Completion.of(answer, basis));
    }
}
