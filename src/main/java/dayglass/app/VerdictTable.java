package dayglass.app;

import dayglass.base.Money;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.scenario.Findings;
import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictWords;
import dayglass.cost.verdict.BreakEven;
import java.time.LocalDate;
import java.util.List;

/** A verdict in words and figures, for people. */
final class VerdictTable {
    private static final VerdictWords SENTENCES = new VerdictWords(Money::toString, LocalDate::toString);

    private VerdictTable() {}

    static String of(Verdict verdict) {
        TextLayout lines =
                new TextLayout().sentence(0, SENTENCES.headline(verdict)).blank();
        lines.heading(
                "Owning, at present value", verdict.costOfOwning().currency().code());
        for (CashFlow.Line line : verdict.owning().presentByFlow()) {
            lines.row(2, line.flow().words(), line.amount().times(-1).amount());
        }
        Money rounding = verdict.owning().presentRounding();
        if (rounding.signum() != 0) {
            lines.row(2, "rounding of the lines above", rounding.times(-1).amount());
        }
        lines.row(0, "Cost of owning", verdict.costOfOwning().amount());
        lines.row(
                2,
                "a year (equivalent annual cost)",
                verdict.owning().equivalentAnnualCost().amount());
        verdict.owning().costPerDayUsed().ifPresent(cost -> lines.row(2, "a day of own use", cost.amount()));
        lines.row(2, "paid back, with the rent saved", VerdictWords.payback(verdict));
        lines.row(2, "return on it, with the rent saved", VerdictWords.returns(verdict.returns()));
        lines.blank().heading("Renting the same jobs instead", "");
        verdict.rented()
                .forEach(each -> lines.row(
                        2,
                        each.kind().name() + ": " + each.oneJob().amount() + " a job, a year",
                        each.aYear().amount()));
        int year = 0;
        for (Money rent : verdict.question().choice().presentCostOfRentingByYear()) {
            lines.row(2, "year " + ++year + ", at present value", rent.amount());
        }
        lines.row(
                0, "Cost of renting, at present value", verdict.costOfRenting().amount());
        lines.blank().heading("Where both cost the same", "");
        breakEven(lines, verdict.inDaysPerYear(), "days of use a year");
        breakEven(lines, verdict.inMonthsOwned(), "months owned");
        breakEven(lines, verdict.inResaleValue(), "resale value");
        breakEven(lines, verdict.inRate(), "per cent of the rates");
        if (!VerdictWords.stopped(verdict).isEmpty()) {
            lines.blank().sentence(0, VerdictWords.stopped(verdict));
        }
        verdict.findings().ifPresent(found -> sure(lines, found));
        rest(lines, verdict);
        lines.blank().heading("Mind", "");
        Verdict.CAUTIONS.forEach(caution -> lines.sentence(2, caution));
        return lines.toString();
    }

    private static void breakEven(TextLayout lines, BreakEven found, String what) {
        List<String> all = VerdictWords.crossings(found);
        for (int at = 0; at < all.size(); at++) {
            lines.row(2, at == 0 ? what : "", all.get(at));
        }
    }

    private static void sure(TextLayout lines, Findings found) {
        lines.blank().heading("How sure: " + found.draws() + " draws from seed " + found.seed(), "");
        lines.row(2, "chance that owning is cheaper", VerdictWords.percent(found.chanceOwningIsCheaper()));
        range(lines, "owning", found.owning());
        range(lines, "renting", found.renting());
        range(lines, "saved by owning", found.saving());
        lines.row(2, "regretted on average if you buy", found.regretOfOwning().amount());
        lines.row(2, "regretted on average if you rent", found.regretOfRenting().amount());
        found.tornado()
                .forEach(bar -> lines.row(
                        2,
                        "saved with " + bar.input() + " at " + VerdictWords.number(bar.low()) + " to "
                                + VerdictWords.number(bar.high()),
                        bar.savingAtLow().amount() + " to " + bar.savingAtHigh().amount()));
    }

    private static void range(TextLayout lines, String what, Findings.Range range) {
        lines.row(
                2,
                what + ", in one case of ten below, half, one of ten above",
                range.p10().amount() + "  " + range.p50().amount() + "  "
                        + range.p90().amount());
    }

    private static void rest(TextLayout lines, Verdict verdict) {
        verdict.rule().ifPresent(ruling -> {
            lines.blank().heading("Had you followed the break-even rule", "");
            lines.sentence(2, SENTENCES.rule(verdict, ruling));
        });
        verdict.nested().ifPresent(ruling -> {
            lines.blank().heading("Had you gone by days, weeks and spells of four weeks", "");
            lines.sentence(2, SENTENCES.nested(verdict, ruling));
        });
        verdict.question().writtenOff().ifPresent(off -> {
            lines.blank().heading("Depreciation for the books: " + off.method(), "");
            if (!off.source().isEmpty()) {
                lines.sentence(2, off.source());
            }
            for (int year = 0; year < off.years().size(); year++) {
                lines.row(2, "year " + (year + 1), off.years().get(year).amount());
            }
        });
    }
}
