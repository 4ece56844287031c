package dayglass.cost.scenario;

import dayglass.base.Money;
import dayglass.cost.plan.StopSignal;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.verdict.Choices;
import dayglass.cost.verdict.JobKind;
import dayglass.cost.verdict.RentInstead;
import dayglass.cost.verdict.RentOrBuy;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Prints how long 100,000 draws of a job of 60 days take, beside the engine alone on as many jobs. */
public final class ScenarioBenchmark {
    private static final int DRAWS = 100_000;
    private static final int ROUNDS = 6;

    private ScenarioBenchmark() {}

    public static void main(String[] arguments) {
        Money none = Choices.euros("0");
        RentalTerms card = new RentalTerms(
                List.of(
                        new RentalTerms.Block(1, Choices.euros("90"), Optional.empty()),
                        new RentalTerms.Block(7, Choices.euros("360"), Optional.empty())),
                Optional.empty(),
                Map.of(),
                List.of(),
                none,
                Choices.euros("60"),
                List.of());
        RentOrBuy plain = Choices.plain(Choices.bought("12000", "8000", 36), "6", "0", "90");
        JobKind job = new JobKind("feature", BigDecimal.ONE, 60, 2, 7);
        RentOrBuy choice = new RentOrBuy(
                plain.discountRate(),
                plain.terms(),
                plain.running(),
                Optional.empty(),
                List.of(job),
                List.of(card),
                plain.rateChangePerYear());
        Scenario scenario = new Scenario(
                choice,
                new Scenario.Spreads(
                        Optional.of(Spread.triangular(0, 0, 6)),
                        Optional.of(Pert.of(60, 100, 120)),
                        Optional.empty(),
                        Optional.of(Spread.triangular(-2, 0, 5)),
                        List.of(new Scenario.OfJobs(
                                Optional.of(Spread.triangular(0, 1, 4)), Optional.of(Spread.triangular(52, 56, 66))))));
        RentInstead rent = new RentInstead(choice.currency(), choice.rates());
        for (int round = 0; round < ROUNDS; round++) {
            long begun = System.nanoTime();
            Findings found = Uncertainty.of(
                            scenario, new Uncertainty.Sample(DRAWS, round), StopSignal.NEVER, done -> {})
                    .orElseThrow();
            long drawn = System.nanoTime();
            long sum = 0;
            for (int at = 0; at < DRAWS; at++) {
                sum += rent.oneJob(job.schedule(60)).minor().longValueExact();
            }
            long alone = System.nanoTime() - drawn;
            System.out.printf(
                    "%d draws %.2f s; the engine alone on one processor %.2f s: ratio %.2f (chance %.3f, sum %d)%n",
                    DRAWS,
                    (drawn - begun) / 1e9,
                    alone / 1e9,
                    (double) (drawn - begun) / alone,
                    found.chanceOwningIsCheaper(),
                    sum);
        }
    }
}
