package dayglass.cost.scenario;

import dayglass.cost.ownership.CashFlow;
import dayglass.cost.ownership.Flow;
import dayglass.cost.ownership.Growth;
import dayglass.cost.ownership.Ownership;
import dayglass.cost.verdict.JobKind;
import dayglass.cost.verdict.RentInstead;
import dayglass.cost.verdict.RentOrBuy;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A choice whose inputs are not sure. All jobs of one kind are alike within a draw: it draws one length for the kind,
 * makes the calendar anew and has the engine find its least rent.
 *
 * <p>Within a draw amounts are doubles of minor units, whose error stays far below a minor unit for amounts that fit;
 * the two results are rounded to whole minor units.
 */
public final class Scenario {
    private static final int YEAR = 12;
    private static final double HUNDRED = 100;
    /** A number of services that came out a hair below a whole one is that one. */
    private static final double HAIR = 1e-9;

    private static final int GLOBAL_INPUTS = 4;

    private final RentOrBuy base;
    private final Spreads spreads;
    private final RentInstead rent;
    private final double[] presentByMonth;
    private final double sure;
    private final double sale;
    private final double aDayUsed;
    private final double aDayLet;

    /**
     * What is spread and how; an input without a spread keeps its value.
     *
     * @param slipDays added to each job, rounded to whole days
     * @param resalePercent of the base case's resale value
     * @param lettingDays a year; only where something is let
     * @param rateChange of rents, in per cent a year
     * @param jobs by kind
     */
    public record Spreads(
            Optional<Spread> slipDays,
            Optional<Spread> resalePercent,
            Optional<Spread> lettingDays,
            Optional<Spread> rateChange,
            List<OfJobs> jobs) {
        public Spreads {
            jobs = List.copyOf(jobs);
        }
    }

    /** Of one kind of job: how many a year, and days used each, rounded to whole days and at least one. */
    public record OfJobs(Optional<Spread> perYear, Optional<Spread> days) {}

    /** An input by what it is called, with its value in the base case; {@code spread} empty where it is sure. */
    public record Input(String name, double value, Optional<Spread> spread) {}

    /**
     * @throws IllegalArgumentException where the days let are spread and nothing is let
     */
    public Scenario(RentOrBuy base, Spreads spreads) {
        if (spreads.lettingDays().isPresent() && base.terms().letting().isEmpty()) {
            throw new IllegalArgumentException("the days let are spread, but nothing is let");
        }
        this.base = base;
        this.spreads = spreads;
        this.rent = new RentInstead(base.currency(), base.rates());
        this.presentByMonth = doubles(
                Growth.by(base.discountRate()).presentByMonth(base.terms().termMonths()));
        CashFlow one = CashFlow.of(oneDayOfEach());
        this.sale = minor(one.presentExactly(Flow.RESALE).add(one.presentExactly(Flow.SELLING_COST)));
        this.aDayUsed = minor(one.presentExactly(Flow.RUNNING).negate());
        this.aDayLet = minor(one.presentExactly(Flow.LETTING).add(one.presentExactly(Flow.WEAR)));
        this.sure = minor(one.presentCostExactly().add(one.presentExactly(Flow.SERVICE_BY_DAYS)))
                + sale
                - aDayUsed
                + aDayLet;
    }

    /** One day used and one let a year, so that every flow that follows days is there by the day. */
    private Ownership oneDayOfEach() {
        return new Ownership(
                base.terms().lettingOn(BigDecimal.ONE),
                base.discountRate(),
                BigDecimal.ONE,
                base.running(),
                base.loan());
    }

    private static double[] doubles(BigDecimal[] exact) {
        double[] all = new double[exact.length];
        for (int at = 0; at < all.length; at++) {
            all[at] = exact[at].doubleValue();
        }
        return all;
    }

    private double minor(BigDecimal major) {
        return major.movePointRight(base.currency().decimals()).doubleValue();
    }

    public RentOrBuy base() {
        return base;
    }

    /** Everything that can be drawn, in the order in which it is. */
    public List<Input> inputs() {
        List<Input> all = new ArrayList<>();
        all.add(new Input("days that a job slips", 0, spreads.slipDays()));
        all.add(new Input("resale, per cent of the base case", HUNDRED, spreads.resalePercent()));
        double letting = base.terms()
                .letting()
                .map(each -> each.daysPerYear().doubleValue())
                .orElse(0.0);
        all.add(new Input("days let a year", letting, spreads.lettingDays()));
        all.add(new Input(
                "change of rates, per cent a year",
                base.rateChangePerYear().value().doubleValue(),
                spreads.rateChange()));
        for (int at = 0; at < base.jobs().size(); at++) {
            JobKind kind = base.jobs().get(at);
            OfJobs of = spreads.jobs().get(at);
            all.add(new Input(kind.name() + ": jobs a year", kind.perYear().doubleValue(), of.perYear()));
            all.add(new Input(kind.name() + ": days a job", kind.days(), of.days()));
        }
        return all;
    }

    /** The draws from this scenario; an input that is sure is its value in each. */
    public MonteCarlo draws(long seed) {
        return new MonteCarlo(
                inputs().stream()
                        .map(input -> input.spread().orElse(Spread.fixed(input.value())))
                        .toList(),
                seed);
    }

    /** The length of a kind's jobs under these inputs, in days used. */
    public int daysOf(int kind, double[] inputs) {
        long days = Math.max(1, Math.round(inputs[GLOBAL_INPUTS + 2 * kind + 1]));
        long slipped = days + Math.max(0, Math.round(inputs[0]));
        return (int) Math.min(base.jobs().get(kind).mostDays(), slipped);
    }

    /** What owning and what renting costs at present value under these inputs, in whole minor units. */
    public double[] costs(double[] inputs) {
        double used = 0;
        double rentOfAYear = 0;
        for (int kind = 0; kind < base.jobs().size(); kind++) {
            double perYear = inputs[GLOBAL_INPUTS + 2 * kind];
            int days = daysOf(kind, inputs);
            used += perYear * days;
            rentOfAYear += perYear
                    * rent.oneJob(base.jobs().get(kind).schedule(days)).minor().doubleValue();
        }
        double let = base.terms().letting().isPresent() ? inputs[2] : 0;
        double owning = sure - sale * inputs[1] / HUNDRED + aDayUsed * used - aDayLet * let + serviceByDays(used + let);
        return new double[] {halfUp(owning), halfUp(rentOfAYear * yearsOfRent(inputs[3]))};
    }

    private double serviceByDays(double daysOut) {
        Optional<Ownership.ServiceByDays> service = base.running().service();
        if (service.isEmpty()) {
            return 0;
        }
        double sum = 0;
        double before = 0;
        for (int month = 1; month < presentByMonth.length - 1; month++) {
            double due = Math.floor(daysOut * month / YEAR / service.get().everyDaysOut() + HAIR);
            sum += (due - before) * presentByMonth[month];
            before = due;
        }
        return sum * service.get().cost().minor().doubleValue();
    }

    /** The present value of one unit of rent a year over the term. */
    private double yearsOfRent(double changePercent) {
        double sum = 0;
        double year = 1;
        for (int month = 1; month < presentByMonth.length; month++) {
            if (month > 1 && month % YEAR == 1) {
                year *= 1 + changePercent / HUNDRED;
            }
            sum += year * presentByMonth[month];
        }
        return sum / YEAR;
    }

    /** To a whole number, a tie away from zero. */
    private static double halfUp(double amount) {
        return Math.copySign(Math.floor(Math.abs(amount) + 0.5), amount);
    }
}
