package dayglass.web.page.ways;

import dayglass.base.Money;
import dayglass.catalogue.LensModel.Look;
import dayglass.cost.plan.Answer;
import dayglass.optics.Verdict;
import dayglass.planning.ways.Payback;
import dayglass.planning.ways.SheetRow;
import dayglass.planning.ways.SlotReport;
import dayglass.web.page.picture.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A row of the options sheet in words.
 *
 * @param number by which the scatter names it, in the order of the ways
 * @param unbeaten no other row costs no more and looks no worse
 */
public record SheetLine(int number, SheetRow row, boolean unbeaten) {
    private static final String DASH = "–";

    public long way() {
        return row.way().number();
    }

    public String name() {
        return row.described().name();
    }

    public String note() {
        return row.described().note();
    }

    public String verdict() {
        return row.picture().worst().map(Verdict::words).orElse("not judged");
    }

    /** How many of the job's slots its own glass serves. */
    public String served() {
        long served = slots().stream().filter(SlotReport::served).count();
        return served + " of " + slots().size() + " slots";
    }

    public List<SlotReport> slots() {
        return row.picture().slots();
    }

    /** Whether there is more to say than what keeps it from serving. */
    public boolean hasMore() {
        return slots().stream()
                        .anyMatch(slot -> slot.served() && !slot.reasons().isEmpty())
                || !(note() + lookNote() + paysNote()).isEmpty();
    }

    public String slotVerdict(SlotReport slot) {
        return slot.verdict().map(Verdict::words).orElse(slot.served() ? "not judged" : "not served");
    }

    public List<String> remarks() {
        return row.picture().remarks();
    }

    public String look() {
        return row.picture().look().map(SheetLine::score).orElse(DASH);
    }

    static String score(BigDecimal score) {
        return score.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** What must be known of the look: its lowest glass, and what was not graded. */
    public String lookNote() {
        List<String> notes = new ArrayList<>();
        row.picture()
                .lowest()
                .filter(lowest -> row.picture().glass().size() > 1)
                .ifPresent(lowest -> notes.add("lowest " + lowest.name() + ", "
                        + lowest.look().score().map(SheetLine::score).orElse(DASH)));
        TreeSet<Look> ungraded = new TreeSet<>();
        row.picture().glass().forEach(glass -> ungraded.addAll(glass.look().ungraded()));
        if (!ungraded.isEmpty()) {
            notes.add("not graded: " + ungraded.stream().map(Look::word).collect(Collectors.joining(", ")));
        }
        return String.join("; ", notes);
    }

    public boolean costed() {
        return row.cost().isPresent();
    }

    public long costing() {
        return row.cost().map(cost -> cost.costing().number()).orElse(0L);
    }

    private String amount(java.util.function.Function<Answer.Comparison, Answer.Row> which) {
        return row.cost()
                .flatMap(cost -> which.apply(cost.comparison()).total())
                .map(Words::amount)
                .orElse(DASH);
    }

    public String bought() {
        return amount(Answer.Comparison::buyOnly);
    }

    public String byDay() {
        return amount(Answer.Comparison::dayRateOnly);
    }

    public String byWeek() {
        return amount(Answer.Comparison::weekRateOnly);
    }

    public String best() {
        return amount(Answer.Comparison::best);
    }

    public String bestNote() {
        return row.cost().filter(cost -> !cost.optimal()).isPresent() ? "best found, not proved" : "";
    }

    public String cash() {
        return row.cost().map(cost -> Words.amount(cost.payable())).orElse(DASH);
    }

    public String budget() {
        return row.cost()
                .flatMap(SheetRow.Cost::withinBudget)
                .map(within -> within ? "yes" : "no")
                .orElse(DASH);
    }

    public String pays() {
        if (row.payback().isEmpty()) {
            return costed() ? "not worked out yet" : DASH;
        }
        return row.payback()
                .flatMap(Payback::shootDays)
                .map(days -> days == 1 ? "1 shoot day" : days + " shoot days")
                .orElse(DASH);
    }

    public String paysNote() {
        return row.payback().map(Payback::why).orElse("");
    }

    public String problem() {
        return row.problem();
    }

    /** What others complete, one line a slot. */
    public List<String> completions() {
        return row.cost().map(SheetRow.Cost::completions).orElse(List.of()).stream()
                .map(each ->
                        each.slot() + " on " + Words.days(each.days()) + " by " + String.join(", ", each.options()))
                .toList();
    }

    Optional<Money> total() {
        return row.cost().map(SheetRow.Cost::total);
    }
}
