package dayglass.cost.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.NetCost;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.plan.Costing;
import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.StopSignal;
import dayglass.cost.verdict.Choices;
import dayglass.cost.verdict.JobKind;
import dayglass.cost.verdict.RentInstead;
import dayglass.cost.verdict.RentOrBuy;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScenarioTest {
    private static final Scenario.OfJobs SURE = new Scenario.OfJobs(Optional.empty(), Optional.empty());

    private static Scenario.Spreads none(RentOrBuy choice) {
        return new Scenario.Spreads(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Collections.nCopies(choice.jobs().size(), SURE));
    }

    private static Scenario.Spreads all(RentOrBuy choice) {
        return new Scenario.Spreads(
                Optional.of(Spread.triangular(0, 1, 5)),
                Optional.of(Pert.of(60, 100, 120)),
                choice.terms().letting().map(let -> Spread.triangular(0, 20, 50)),
                Optional.of(Spread.empirical(List.of(-2.0, 0.0, 3.0))),
                Collections.nCopies(
                        choice.jobs().size(),
                        new Scenario.OfJobs(
                                Optional.of(Pert.of(0.5, 3, 8)), Optional.of(Spread.triangular(2, 10, 40)))));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void withoutSpreadEveryFigureIsTheBaseCase(int seed) {
        RentOrBuy choice = Choices.random(new Random(seed));
        Findings found = Uncertainty.of(
                        new Scenario(choice, none(choice)),
                        new Uncertainty.Sample(100, seed),
                        StopSignal.NEVER,
                        done -> {})
                .orElseThrow();
        Money owning = choice.presentCostOfOwning();
        Money renting = choice.presentCostOfRenting();
        assertEquals(new Findings.Range(owning, owning, owning, owning), found.owning());
        assertEquals(new Findings.Range(renting, renting, renting, renting), found.renting());
        assertEquals(renting.minus(owning), found.saving().mean());
        assertEquals(owning.compareTo(renting) < 0 ? 1.0 : 0.0, found.chanceOwningIsCheaper());
        assertEquals(List.of(), found.tornado());
    }

    @Test
    void daysLetAreNotSpreadWhereNothingIsLet() {
        RentOrBuy choice = Choices.plain(Choices.bought("100", "0", 12), "0", "0", "9");
        Scenario.Spreads spreads = new Scenario.Spreads(
                Optional.empty(), Optional.empty(), Optional.of(Spread.fixed(3)), Optional.empty(), List.of(SURE));
        assertThrows(IllegalArgumentException.class, () -> new Scenario(choice, spreads));
    }

    /** Draws taken out and costed by the whole engine and by the exact purchase cost. */
    @ParameterizedTest
    @ValueSource(ints = {31, 32, 33, 34})
    void sampledDrawsCostWhatTheEngineSays(int seed) {
        RentOrBuy choice = Choices.random(new Random(seed));
        Scenario scenario = new Scenario(choice, all(choice));
        MonteCarlo draws = scenario.draws(seed);
        for (int draw = 0; draw < 4_000; draw += 500) {
            double[] inputs = draws.inputs(draw);
            double[] costs = scenario.costs(inputs);
            RentOrBuy moved = moved(choice, scenario, inputs);
            assertEquals(moved.presentCostOfOwning().minor().doubleValue(), costs[0], 1.0);
            assertEquals(moved.presentCostOfRenting().minor().doubleValue(), costs[1], 1.0);
            for (JobKind kind : moved.jobs()) {
                RentInstead rent = new RentInstead(moved.currency(), moved.rates());
                Costing costing = LeastCost.solve(rent.question(kind.schedule()), StopSignal.NEVER);
                Money total = costing.fold(
                        planned -> planned.answer().total(),
                        impossible -> Money.zero(moved.currency()),
                        late -> Money.zero(moved.currency()));
                assertEquals(total, rent.oneJob(kind.schedule()));
            }
        }
    }

    /** The base case with everything as drawn; a drawn resale becomes a point. */
    private static RentOrBuy moved(RentOrBuy choice, Scenario scenario, double[] inputs) {
        PurchaseTerms terms = choice.terms().lettingOn(BigDecimal.valueOf(inputs[2]));
        int months = terms.termMonths();
        BigDecimal value = new dayglass.cost.ownership.ResaleCurve(
                        terms.price(), terms.resale().value())
                .valueAt(months)
                .multiply(BigDecimal.valueOf(inputs[1]))
                .movePointLeft(2);
        PurchaseTerms sold = new PurchaseTerms(
                terms.price(),
                terms.tax(),
                terms.extras(),
                months,
                new PurchaseTerms.Resale(
                        new PurchaseTerms.Points(List.of(new PurchaseTerms.Point(
                                months,
                                Money.of(choice.currency(), value.setScale(2, java.math.RoundingMode.HALF_UP))))),
                        terms.resale().sellingCost()),
                terms.holding(),
                terms.service(),
                terms.letting());
        List<JobKind> jobs = new ArrayList<>();
        for (int at = 0; at < choice.jobs().size(); at++) {
            JobKind kind = choice.jobs().get(at);
            jobs.add(new JobKind(
                    kind.name(),
                    BigDecimal.valueOf(inputs[4 + 2 * at]),
                    scenario.daysOf(at, inputs),
                    kind.prepDays(),
                    kind.daysPerWeek()));
        }
        return new RentOrBuy(
                choice.discountRate(),
                sold,
                choice.running(),
                choice.loan(),
                jobs,
                choice.rates(),
                new Percent(BigDecimal.valueOf(inputs[3])));
    }

    @Test
    void theSameSeedGivesTheSameFiguresAndAnotherOthers() {
        RentOrBuy choice = Choices.random(new Random(9));
        Scenario scenario = new Scenario(choice, all(choice));
        Findings first = run(scenario, 5);
        assertEquals(first, run(scenario, 5));
        assertTrue(!first.owning().equals(run(scenario, 6).owning()));
        assertTrue(first.chanceOwningIsCheaper() >= 0 && first.chanceOwningIsCheaper() <= 1);
        assertEquals(
                1_000,
                first.distribution().stream().mapToInt(Findings.Bin::draws).sum());
        assertEquals(20, first.convergence().size());
        assertEquals(1_000, first.convergence().get(19).draws());
        Money regrets = first.regretOfRenting().minus(first.regretOfOwning());
        assertTrue(
                regrets.minus(first.saving().mean()).minor().abs().intValueExact() <= 2,
                "what is regretted either way differs by the mean saving");
    }

    private static Findings run(Scenario scenario, long seed) {
        return Uncertainty.of(scenario, new Uncertainty.Sample(1_000, seed), StopSignal.NEVER, done -> {})
                .orElseThrow();
    }

    /** A bar is what the base case costs with that one input moved. */
    @Test
    void eachBarIsARerunWithOneInputMoved() {
        RentOrBuy choice = Choices.random(new Random(12));
        Scenario scenario = new Scenario(choice, all(choice));
        List<Findings.Bar> bars = run(scenario, 1).tornado();
        assertEquals(4 + 2 * choice.jobs().size(), bars.size());
        for (int at = 1; at < bars.size(); at++) {
            assertTrue(bars.get(at - 1).width().compareTo(bars.get(at).width()) >= 0);
        }
        Findings.Bar rates = bars.stream()
                .filter(bar -> bar.input().startsWith("change of rates"))
                .findFirst()
                .orElseThrow();
        RentOrBuy moved = new RentOrBuy(
                choice.discountRate(),
                choice.terms(),
                choice.running(),
                choice.loan(),
                choice.jobs(),
                choice.rates(),
                Percent.of("3"));
        assertEquals(moved.presentCostOfRenting().minus(moved.presentCostOfOwning()), rates.savingAtHigh());
    }

    /** An input spread otherwise leaves the draws of the others as they are. */
    @Test
    void theDrawsOfOneInputDoNotDependOnTheOthers() {
        MonteCarlo one = new MonteCarlo(List.of(Spread.triangular(0, 1, 2), Spread.fixed(3)), 4);
        MonteCarlo other = new MonteCarlo(List.of(Spread.triangular(0, 1, 2), Spread.triangular(0, 5, 9)), 4);
        for (int draw = 0; draw < 50; draw++) {
            assertEquals(one.inputs(draw)[0], other.inputs(draw)[0]);
        }
    }

    @Test
    void progressIsToldAndAStopIsKept() {
        RentOrBuy choice = Choices.random(new Random(3));
        Scenario scenario = new Scenario(choice, all(choice));
        AtomicInteger most = new AtomicInteger();
        Uncertainty.of(
                scenario,
                new Uncertainty.Sample(1_100, 1),
                StopSignal.NEVER,
                done -> most.accumulateAndGet(done, Math::max));
        assertEquals(1_100, most.get());
        assertEquals(
                Optional.empty(),
                Uncertainty.of(scenario, new Uncertainty.Sample(1_100, 1), () -> most.get() > 0, done -> {}));
    }

    /** What was drawn before the stop stands: each draw is what it is in the whole, and all figures are of those alone. */
    @Test
    void whatWasDrawnBeforeTheStopIsKept() {
        RentOrBuy choice = Choices.random(new Random(3));
        Scenario scenario = new Scenario(choice, all(choice));
        AtomicInteger looks = new AtomicInteger();
        Findings found = Uncertainty.of(
                        scenario, new Uncertainty.Sample(5_000, 1), () -> looks.incrementAndGet() > 600, done -> {})
                .orElseThrow();
        assertEquals(600, found.draws());
        assertEquals(5_000, found.asked());
        assertEquals(
                600, found.convergence().get(found.convergence().size() - 1).draws());
        assertEquals(
                600, found.distribution().stream().mapToInt(Findings.Bin::draws).sum());
    }

    /** Percentiles of Hyndman and Fan 1996, type 7. */
    @Test
    void percentiles() {
        double[] numbers = {1, 2, 3, 4};
        assertEquals(1.75, Findings.percentile(numbers, 0.25));
        assertEquals(2.5, Findings.percentile(numbers, 0.5));
        assertEquals(3.25, Findings.percentile(numbers, 0.75));
        double[] other = {6, 7, 15, 36, 39, 40, 41, 42, 43, 47, 49};
        assertEquals(25.5, Findings.percentile(other, 0.25));
        assertEquals(42.5, Findings.percentile(other, 0.75));
    }

    @Test
    void whatIsSureIsThePurchaseCost() {
        RentOrBuy choice = Choices.plain(Choices.bought("8000", "5000", 36), "6", "0", "90");
        double[] costs = new Scenario(choice, none(choice)).costs(new double[] {0, 100, 0, 0, 10, 1});
        assertEquals(NetCost.of(choice.terms(), Percent.of("6")).minor().doubleValue(), costs[0]);
    }
}
