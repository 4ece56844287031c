package dayglass.web.page.verdict;

import dayglass.base.Money;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictWords;
import dayglass.cost.verdict.BreakEven;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A verdict as the page shows it. */
public record VerdictView(
        String headline,
        String stopped,
        List<Row> owning,
        List<Row> renting,
        List<Row> rentByYear,
        List<BreakEvenRow> breakEvens,
        List<Row> sure,
        List<Ruled> ruled,
        List<Picture> pictures,
        List<Month> months,
        List<Working> workings,
        List<Row> writtenOff,
        List<String> cautions) {
    private static final VerdictWords SENTENCES = new VerdictWords(Words::money, Words::day);

    public VerdictView {
        owning = List.copyOf(owning);
        renting = List.copyOf(renting);
        rentByYear = List.copyOf(rentByYear);
        breakEvens = List.copyOf(breakEvens);
        sure = List.copyOf(sure);
        ruled = List.copyOf(ruled);
        pictures = List.copyOf(pictures);
        months = List.copyOf(months);
        workings = List.copyOf(workings);
        writtenOff = List.copyOf(writtenOff);
        cautions = List.copyOf(cautions);
    }

    /** A line; {@code sum} where it adds up those above. */
    public record Row(String label, String amount, boolean sum) {}

    /**
     * A month's money in words.
     *
     * @param worth what one unit of that month is worth at the purchase
     */
    public record Month(int month, String lines, String worth, String sum, String soFar) {}

    public record BreakEvenRow(String what, List<String> where) {
        public BreakEvenRow {
            where = List.copyOf(where);
        }
    }

    /** What a rule would have done with what was rented so far. */
    public record Ruled(String heading, String words, List<Row> lines) {
        public Ruled {
            lines = List.copyOf(lines);
        }
    }

    /** A chart with its heading and what its axes are. */
    public record Picture(String heading, String axes, Chart chart) {}

    static VerdictView of(Verdict verdict) {
        return new VerdictView(
                SENTENCES.headline(verdict),
                VerdictWords.stopped(verdict),
                owning(verdict),
                renting(verdict),
                rentByYear(verdict),
                List.of(
                        row("Days of use a year", verdict.inDaysPerYear()),
                        row("Months owned", verdict.inMonthsOwned()),
                        row("Resale value", verdict.inResaleValue()),
                        row("Rates, in per cent of these", verdict.inRate())),
                sure(verdict),
                ruled(verdict),
                pictures(verdict),
                months(verdict),
                Workings.of(verdict),
                writtenOff(verdict),
                Verdict.CAUTIONS);
    }

    private static List<Month> months(Verdict verdict) {
        return verdict.against().months().stream()
                .map(month -> new Month(
                        month.month(),
                        month.lines().stream()
                                .map(line -> line.flow().words() + " " + Words.amount(line.amount()))
                                .collect(Collectors.joining("; ")),
                        Workings.factor(verdict.owning().worth(month.month())),
                        Words.amount(month.sum()),
                        Words.amount(month.soFar())))
                .toList();
    }

    private static Row line(String label, Money amount) {
        return new Row(label, Words.amount(amount), false);
    }

    private static List<Row> owning(Verdict verdict) {
        List<Row> rows = new ArrayList<>();
        for (CashFlow.Line line : verdict.owning().presentByFlow()) {
            rows.add(line(line.flow().words(), line.amount().times(-1)));
        }
        Money rounding = verdict.owning().presentRounding();
        if (rounding.signum() != 0) {
            rows.add(line("rounding of the lines above", rounding.times(-1)));
        }
        rows.add(new Row("Cost of owning", Words.money(verdict.costOfOwning()), true));
        rows.add(line("a year, evenly", verdict.owning().equivalentAnnualCost()));
        verdict.owning().costPerDayUsed().ifPresent(cost -> rows.add(line("a day of own use", cost)));
        rows.add(new Row("paid back, with the rent saved", VerdictWords.payback(verdict), false));
        rows.add(new Row("return, with the rent saved", VerdictWords.returns(verdict.returns()), false));
        return rows;
    }

    private static List<Row> renting(Verdict verdict) {
        List<Row> rows = new ArrayList<>();
        verdict.rented().forEach(each -> {
            rows.add(line(each.kind().name() + ", one job", each.oneJob()));
            rows.add(line(each.kind().name() + ", a year", each.aYear()));
        });
        rows.add(new Row("Cost of renting", Words.money(verdict.costOfRenting()), true));
        return rows;
    }

    private static List<Row> rentByYear(Verdict verdict) {
        List<Row> rows = new ArrayList<>();
        verdict.question()
                .choice()
                .presentCostOfRentingByYear()
                .forEach(rent -> rows.add(line("year " + (rows.size() + 1), rent)));
        rows.add(new Row("Cost of renting", Words.money(verdict.costOfRenting()), true));
        return rows;
    }

    private static BreakEvenRow row(String what, BreakEven found) {
        return new BreakEvenRow(what, VerdictWords.crossings(found));
    }

    private static List<Row> sure(Verdict verdict) {
        List<Row> rows = new ArrayList<>();
        verdict.findings().ifPresent(found -> {
            rows.add(new Row(
                    "Chance that owning is cheaper", VerdictWords.percent(found.chanceOwningIsCheaper()), true));
            rows.add(line(
                    "Saved by owning, one case in ten is below", found.saving().p10()));
            rows.add(line("half are below", found.saving().p50()));
            rows.add(line("nine in ten are below", found.saving().p90()));
            rows.add(line("Regretted on average if you buy", found.regretOfOwning()));
            rows.add(line("Regretted on average if you rent", found.regretOfRenting()));
            int last = found.convergence().size() - 1;
            for (int at : new int[] {last / 4, last / 2, last}) {
                var step = found.convergence().get(at);
                rows.add(new Row(
                        "the chance after " + step.draws() + " draws",
                        VerdictWords.percent(step.chanceOwningIsCheaper()) + " ± " + VerdictWords.percent(step.error()),
                        false));
            }
        });
        return rows;
    }

    private static List<Ruled> ruled(Verdict verdict) {
        List<Ruled> all = new ArrayList<>();
        verdict.rule()
                .ifPresent(ruling -> all.add(new Ruled(
                        "Renting until it has cost the price",
                        SENTENCES.rule(verdict, ruling),
                        List.of(
                                line("rent paid", ruling.rentPaid()),
                                line("bought", ruling.cost().minus(ruling.rentPaid())),
                                new Row("Cost", Words.money(ruling.cost()), true)))));
        verdict.nested().ifPresent(ruling -> {
            List<Row> lines = new ArrayList<>();
            ruling.taken()
                    .forEach(taken -> lines.add(line(
                            taken.days()
                                    .map(days -> "rented " + Words.dates(days))
                                    .orElse("bought on " + Words.day(taken.on())),
                            taken.price())));
            lines.add(new Row("Cost", Words.money(ruling.cost()), true));
            all.add(new Ruled("By days, weeks and spells of four weeks", SENTENCES.nested(verdict, ruling), lines));
        });
        return all;
    }

    private static List<Picture> pictures(Verdict verdict) {
        String currency = verdict.costOfOwning().currency().code();
        List<Picture> all = new ArrayList<>();
        all.add(new Picture(
                "Owning and renting, by months owned",
                "across: months until the sale; up: cost at present value, " + currency,
                Charts.curve(verdict.inMonthsOwned(), "Cost of owning and of renting by months owned")));
        all.add(new Picture(
                "Owning and renting, by days of use",
                "across: days of use a year; up: cost at present value, " + currency,
                Charts.curve(verdict.inDaysPerYear(), "Cost of owning and of renting by days of use a year")));
        all.add(new Picture(
                "Money by month, with the rent saved",
                "across: months; up: in, down: out, " + currency,
                Charts.cashFlow(verdict.against().months())));
        verdict.findings().ifPresent(found -> {
            if (!found.tornado().isEmpty()) {
                all.add(new Picture(
                        "What matters most",
                        "saved by owning, " + currency + ", as one input alone moves from its low to its high",
                        Charts.tornado(found)));
                all.add(new Picture(
                        "How often owning saves how much",
                        "across: saved by owning, " + currency + "; up: draws of " + found.draws(),
                        Charts.distribution(found)));
            }
        });
        return all;
    }

    private static List<Row> writtenOff(Verdict verdict) {
        List<Row> rows = new ArrayList<>();
        verdict.question().writtenOff().ifPresent(off -> {
            rows.add(new Row(off.method() + (off.source().isEmpty() ? "" : " (" + off.source() + ")"), "", true));
            for (int year = 0; year < off.years().size(); year++) {
                rows.add(line("year " + (year + 1), off.years().get(year)));
            }
        });
        return rows;
    }
}
