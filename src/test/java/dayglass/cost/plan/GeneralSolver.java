package dayglass.cost.plan;

import java.time.Duration;
import java.util.Optional;
import java.util.function.IntToLongFunction;

/** A general mixed-integer solver that knows nothing of lenses, periods or days. */
public interface GeneralSolver {
    /** Name, version and threads, as the benchmark prints them. */
    String description();

    /** The form of the model that suits this solver better. */
    PeriodModel.Form form();

    /**
     * Solves to a relative gap.
     *
     * @param gap by which the answer may miss the least total, relative to it
     */
    Outcome solve(PeriodModel model, Duration limit, double gap);

    /** How a run ended. */
    enum Status {
        SOLVED,
        INFEASIBLE,
        NOT_SOLVED
    }

    /**
     * What a run found.
     *
     * @param total of the best found, in minor units, added up exactly from the columns taken
     */
    record Outcome(Status status, Optional<Long> total) {}

    /** The exact total of the columns taken, or empty where they break a row. */
    static Optional<Long> total(PeriodModel model, IntToLongFunction taken) {
        for (PeriodModel.Row row : model.rows()) {
            long sum = row.terms().stream()
                    .mapToLong(term -> term.factor() * taken.applyAsLong(term.column()))
                    .sum();
            if (sum < row.least().orElse(Long.MIN_VALUE) || sum > row.most().orElse(Long.MAX_VALUE)) {
                return Optional.empty();
            }
        }
        long total = 0;
        for (int column = 0; column < model.columns().size(); column++) {
            total += taken.applyAsLong(column) * model.columns().get(column).cost();
        }
        return Optional.of(total);
    }
}
