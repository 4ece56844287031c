package dayglass.web.page.verdict;

import dayglass.base.Money;
import dayglass.cost.plan.Choice;
import dayglass.cost.rental.RentalCharge;
import dayglass.cost.scenario.Findings;
import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictWords;
import dayglass.cost.verdict.BreakEven;
import dayglass.cost.verdict.JobKind;
import dayglass.cost.verdict.RentInstead;
import dayglass.web.page.picture.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the figures of a verdict come about, beside the lines that stand on the page anyhow. */
final class Workings {
    private static final int DECIMALS_OF_WORTH = 6;
    private static final String AMOUNT = "amount";

    private Workings() {}

    static List<Working> of(Verdict verdict) {
        List<Working> all = new ArrayList<>();
        all.add(evenly(verdict));
        RentInstead rent = new RentInstead(
                verdict.costOfRenting().currency(), verdict.question().choice().rates());
        verdict.rented().forEach(each -> all.add(oneJob(rent, each.kind(), each.oneJob())));
        all.add(bothSides(verdict));
        verdict.findings().ifPresent(found -> {
            all.add(average(found));
            all.add(drawn(found));
            if (!found.tornado().isEmpty()) {
                all.add(moved(found));
            }
            all.add(settling(found));
        });
        return all;
    }

    /** A rate or factor as it multiplies. */
    static String factor(BigDecimal exact) {
        return exact.setScale(DECIMALS_OF_WORTH, RoundingMode.HALF_UP).toPlainString();
    }

    private static Working evenly(Verdict verdict) {
        List<List<String>> rows = new ArrayList<>();
        int months = verdict.question().choice().terms().termMonths();
        rows.add(List.of("Cost of owning", Words.amount(verdict.costOfOwning())));
        rows.add(List.of(
                "1.00 at the end of each year, over " + months + " months, is worth at first",
                factor(verdict.owning().yearsWorth())));
        rows.add(List.of(
                "a year, evenly: the one by the other",
                Words.amount(verdict.owning().equivalentAnnualCost())));
        verdict.owning().costPerDayUsed().ifPresent(cost -> {
            rows.add(List.of(
                    "days of own use a year",
                    VerdictWords.plain(verdict.question().choice().daysPerYear())));
            rows.add(List.of("a day of own use: a year by its days", Words.amount(cost)));
        });
        return new Working("Owning a year and a day", List.of("", AMOUNT), rows, true);
    }

    private static Working oneJob(RentInstead rent, JobKind kind, Money together) {
        Map<String, Money> sums = new LinkedHashMap<>();
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Choice.Rent period : rent.periods(kind.schedule())) {
            Tally tally = new Tally(sums, counts);
            tally.charge(period.charge());
        }
        List<List<String>> rows = new ArrayList<>();
        sums.forEach((what, sum) -> {
            int count = counts.getOrDefault(what, 1);
            rows.add(List.of(count == 1 ? what : count + " × " + what, Words.amount(sum)));
        });
        rows.add(List.of("One job", Words.amount(together)));
        return new Working(kind.name() + ", the rent of one job", List.of("", AMOUNT), rows, true);
    }

    /** What a rental's lines come to by what they are for. */
    private record Tally(Map<String, Money> sums, Map<String, Integer> counts) {
        void charge(RentalCharge charge) {
            for (RentalCharge.BlockUsed block : charge.blocks()) {
                String name = block.extraDay() ? "a further day" : Words.days(block.days());
                add(name + " at " + Words.amount(block.price()), block.price());
            }
            add("long-hire discount", charge.discount().times(-1));
            add("raised to the minimum charge", charge.raisedToMinimum());
            add("trip", charge.trip());
            charge.addOns().forEach(addOn -> add(addOn.name(), addOn.amount()));
        }

        private void add(String what, Money amount) {
            if (amount.signum() != 0) {
                sums.merge(what, amount, Money::plus);
                counts.merge(what, 1, Integer::sum);
            }
        }
    }

    private static Working bothSides(Verdict verdict) {
        List<List<String>> rows = new ArrayList<>();
        sides(rows, "days of use a year", verdict.inDaysPerYear());
        sides(rows, "months owned", verdict.inMonthsOwned());
        sides(rows, "resale value", verdict.inResaleValue());
        sides(rows, "rates, in per cent of these", verdict.inRate());
        return new Working(
                "Both costs on either side of where they are the same",
                List.of("", "at", "owning", "renting"),
                rows,
                false);
    }

    private static void sides(List<List<String>> rows, String what, BreakEven found) {
        for (BreakEven.Crossing crossing : found.crossings()) {
            for (BreakEven.Point side : List.of(crossing.before(), crossing.after())) {
                rows.add(List.of(
                        what, side.place().toPlainString(), Words.amount(side.owning()), Words.amount(side.renting())));
            }
        }
    }

    /** Regret of one way less regret of the other is what the one saves. */
    private static Working average(Findings found) {
        return new Working(
                "Averages and regret",
                List.of("", "average", "one in ten below", "half below", "nine in ten below"),
                List.of(
                        range("renting", found.renting()),
                        range("owning", found.owning()),
                        range("saved by owning: renting less owning of each draw", found.saving()),
                        List.of(
                                "regretted if you rent: what owning saves where it saves, else nothing",
                                Words.amount(found.regretOfRenting()),
                                "",
                                "",
                                ""),
                        List.of(
                                "regretted if you buy: what renting saves where it saves, else nothing",
                                Words.amount(found.regretOfOwning()),
                                "",
                                "",
                                "")),
                false);
    }

    private static List<String> range(String what, Findings.Range range) {
        return List.of(
                what,
                Words.amount(range.mean()),
                Words.amount(range.p10()),
                Words.amount(range.p50()),
                Words.amount(range.p90()));
    }

    private static Working drawn(Findings found) {
        List<List<String>> rows = new ArrayList<>();
        int soFar = 0;
        for (Findings.Bin bin : found.distribution()) {
            soFar += bin.draws();
            rows.add(List.of(
                    Words.amount(bin.from()) + " to " + Words.amount(bin.until()),
                    String.valueOf(bin.draws()),
                    String.valueOf(soFar)));
        }
        return new Working(
                "The draws by what owning saved", List.of("saved by owning", "draws", "so far"), rows, false);
    }

    private static Working moved(Findings found) {
        return new Working(
                "What is saved as one input alone moves",
                List.of("", "low", "high", "saved at low", "saved at high"),
                found.tornado().stream()
                        .map(bar -> List.of(
                                bar.input(),
                                VerdictWords.number(bar.low()),
                                VerdictWords.number(bar.high()),
                                Words.amount(bar.savingAtLow()),
                                Words.amount(bar.savingAtHigh())))
                        .toList(),
                false);
    }

    private static Working settling(Findings found) {
        return new Working(
                "How the chance settled with more draws",
                List.of("draws", "chance that owning is cheaper", "±", "saved on average"),
                found.convergence().stream()
                        .map(step -> List.of(
                                String.valueOf(step.draws()),
                                VerdictWords.percent(step.chanceOwningIsCheaper()),
                                VerdictWords.percent(step.error()),
                                Words.amount(step.meanSaving())))
                        .toList(),
                false);
    }
}
