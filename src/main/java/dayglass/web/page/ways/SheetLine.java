package dayglass.web.page.ways;

import dayglass.base.Money;
import dayglass.catalogue.LensModel.Look;
import dayglass.cost.plan.Answer;
import dayglass.job.Way;
import dayglass.optics.Verdict;
import dayglass.planning.glass.SlotReport;
import dayglass.planning.ways.Completion;
import dayglass.planning.ways.Frontier;
import dayglass.planning.ways.OptionsSheet;
import dayglass.planning.ways.Payback;
import dayglass.planning.ways.SheetRow;
import dayglass.planning.ways.Taken;
import dayglass.web.page.picture.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    /** The rows of a sheet so far. */
    static List<SheetLine> of(OptionsSheet sheet) {
        List<SheetRow> rows = sheet.rows();
        Set<Way.Id> unbeaten = Frontier.of(rows);
        List<SheetLine> lines = new ArrayList<>();
        for (SheetRow row : rows) {
            lines.add(new SheetLine(lines.size() + 1, row, unbeaten.contains(row.way())));
        }
        return lines;
    }

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
        long refused = row.picture().refused();
        return served + " of " + slots().size() + " slots" + (refused == 0 ? "" : ", " + refused + " refused");
    }

    public List<SlotReport> slots() {
        return row.picture().slots();
    }

    /** Whether there is more to say than what keeps it from serving. */
    public boolean hasMore() {
        return slots().stream()
                        .anyMatch(slot -> slot.served() && !slot.reasons().isEmpty())
                || !(note() + lookNote()).isEmpty();
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
        return row.bought().map(Words::amount).orElse(DASH);
    }

    /** What must be known of the amount bought; empty text where it is a row of the costing. */
    public String boughtNote() {
        List<String> notes = new ArrayList<>();
        row.costs().bought().ifPresent(bought -> {
            if (bought.beyondCash()) {
                notes.add("takes " + Words.amount(bought.cash()) + " in cash, more than the job's cash limit");
            }
            if (bought.completedByRenting()) {
                notes.add("what completes it is rented");
            }
        });
        return String.join("; ", notes);
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

    /** What the best mix pays for; empty text where nothing is paid for. */
    public String takes() {
        return row.cost().map(SheetRow.Cost::taken).orElse(List.of()).stream()
                .filter(taken -> taken.how() != Taken.How.OWNED)
                .map(SheetLine::words)
                .collect(Collectors.joining("; "));
    }

    private static String words(Taken taken) {
        return taken.how() == Taken.How.BOUGHT
                ? taken.option() + " bought" + (taken.periods() > 1 ? " " + taken.periods() + " times" : "")
                : taken.option() + " rented for " + Words.days(taken.days())
                        + (taken.periods() > 1 ? " in " + taken.periods() + " periods" : "");
    }

    /** What others complete: slots that the same serves on as many days on one line. */
    public List<String> completions() {
        Map<String, List<String>> slots = new LinkedHashMap<>();
        row.cost()
                .map(SheetRow.Cost::completions)
                .orElse(List.of())
                .forEach(each -> slots.computeIfAbsent(
                                " on " + Words.days(each.days()) + " by "
                                        + each.by().stream()
                                                .map(SheetLine::words)
                                                .collect(Collectors.joining(", ")),
                                how -> new ArrayList<>())
                        .add(each.slot()));
        return slots.entrySet().stream()
                .map(each -> String.join(", ", each.getValue()) + each.getKey())
                .toList();
    }

    private static String words(Completion.By by) {
        String what = String.join(", ", by.glass());
        String told = by.verdict().map(verdict -> what + ": " + verdict.words()).orElse(by.untold());
        return by.option() + (told.isEmpty() ? "" : " (" + told + ")");
    }

    Optional<Money> total() {
        return row.cost().map(SheetRow.Cost::total);
    }
}
