package dayglass.cost.plan;

import dayglass.base.Money;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The engine's time for {@code best} alone beside a general mixed-integer solver's on the same question, as a table on
 * standard output. Seeds are fixed.
 *
 * <p>Arguments, all optional: {@code shapes=one60,one1100,8x90,12x180,16x366}, {@code solvers=ojalgo} (with the profile
 * {@code benchmark} also {@code HIGHS}, {@code CBC}, {@code SCIP}, {@code SAT}; {@code none} for the engine alone),
 * {@code limit=8} seconds for the general solver, {@code engine-limit=10} seconds for the engine, {@code gap=1e-6}
 * relative for the general solver, {@code most-columns=60000} beyond which it is not tried.
 *
 * <p>The engine is timed whole, from the question; the general solver from its finished model, which leaves out its
 * building. Ratios are of one run on one machine; a run that ends at a limit has none.
 */
public final class PlanBenchmark {
    private static final Duration WARM_UP = Duration.ofMillis(1_500);
    private static final int MOST_RUNS = 20_000;
    private static final int LEAST_RUNS = 3;

    /** Questions of one size. */
    private record Shape(String name, String words, List<Question> questions) {}

    /** What the engine did. */
    private record Timed(long nanos, Optional<Money> total, Optional<Money> bound) {
        boolean proved() {
            return total.isPresent() && total.equals(bound);
        }
    }

    private final BenchmarkSettings settings;
    private final List<GeneralSolver> solvers;

    private PlanBenchmark(BenchmarkSettings settings) {
        this.settings = settings;
        this.solvers = settings.solvers();
    }

    /** Runs the benchmark with the arguments that the class describes. */
    public static void main(String[] arguments) {
        new PlanBenchmark(BenchmarkSettings.of(arguments)).run();
    }

    private void run() {
        print(
                "Java %s, %d processors, %d MiB of heap at most; general solvers stop at %s, gap %s%n",
                Runtime.version(),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20,
                settings.limit(),
                settings.gap());
        solvers.forEach(solver -> print("- %s, on the model in %s form%n", solver.description(), solver.form()));
        warmUpSolvers();
        for (Shape shape : shapes()) {
            print("%n%s: %s%n", shape.name(), shape.words());
            print("  %-12s %12s %16s %16s %10s %s%n", "question", "engine ms", "total", "bound", "gap %", "");
            for (Question question : shape.questions()) {
                row(question);
            }
        }
    }

    private List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        for (String name : settings.shapes()) {
            shapes.add(
                    switch (name) {
                        case "one60" ->
                            new Shape(
                                    name,
                                    "one slot, 60 days, 1 and 3 options",
                                    List.of(RandomJobs.oneSlot(1, 60, 1), RandomJobs.oneSlot(2, 60, 3)));
                        case "one1100" ->
                            new Shape(
                                    name, "one slot, 1,100 days, 8 options", List.of(RandomJobs.oneSlot(1, 1_100, 8)));
                        case "8x90" -> films(name, 5, 8, 90, 27);
                        case "12x180" -> films(name, 3, 12, 180, 60);
                        case "16x366" -> films(name, 2, 16, 366, 120);
                        default -> throw new IllegalArgumentException("no shape is called " + name);
                    });
        }
        return shapes;
    }

    private static Shape films(String name, int seeds, int slots, int days, int options) {
        List<Question> questions = new ArrayList<>();
        for (int seed = 1; seed <= seeds; seed++) {
            questions.add(RandomJobs.film(seed, slots, days, options));
        }
        return new Shape(name, slots + " slots, " + days + " days, " + options + " options", questions);
    }

    private void row(Question question) {
        Timed engine = engine(question);
        print(
                "  %-12s %12.3f %16s %16s %10s %s%n",
                question.job(),
                engine.nanos() / 1e6,
                engine.total().map(Money::amount).orElse("none"),
                engine.bound().map(Money::amount).orElse("none"),
                gapPercent(engine),
                engine.proved() ? "proved" : "not proved");
        for (GeneralSolver solver : solvers) {
            compare(question, engine, solver);
        }
    }

    private void compare(Question question, Timed engine, GeneralSolver solver) {
        try {
            PeriodModel model = new PeriodModel(question, solver.form(), settings.mostColumns());
            long begun = System.nanoTime();
            GeneralSolver.Outcome outcome = solver.solve(model, settings.limit(), settings.gap());
            long nanos = System.nanoTime() - begun;
            Optional<Money> total = outcome.total().map(minor -> Money.ofMinor(question.currency(), minor));
            boolean solved = outcome.status() == GeneralSolver.Status.SOLVED;
            boolean comparable = solved && engine.proved();
            print(
                    "    %12.1f ms %16s  %s  %s columns, %s%s%n",
                    nanos / 1e6,
                    total.map(Money::amount).orElse("none"),
                    comparable
                            ? String.format(Locale.ROOT, "ratio %.1f", (double) nanos / engine.nanos())
                            : solved ? "solved, the engine did not prove its own" : "not solved",
                    model.columns().size(),
                    name(solver),
                    comparable && total.isPresent() ? agreement(engine, total.get()) : "");
        } catch (PeriodModel.TooLarge tooLarge) {
            print("    not tried: more than %s columns, %s%n", tooLarge.columns(), name(solver));
        }
    }

    private String agreement(Timed engine, Money total) {
        Money difference = total.minus(engine.total().orElseThrow());
        double relative = Math.abs(difference.major().doubleValue())
                / Math.max(1, Math.abs(total.major().doubleValue()));
        if (difference.signum() == 0) {
            return ", same total";
        }
        boolean beaten = difference.signum() < 0;
        return beaten || relative > settings.gap() ? ", DISAGREES by " + difference : ", within its gap";
    }

    private static String name(GeneralSolver solver) {
        return solver.description().split(",", -1)[0];
    }

    private static String gapPercent(Timed engine) {
        if (engine.total().isEmpty() || engine.bound().isEmpty()) {
            return "-";
        }
        double total = engine.total().get().major().doubleValue();
        double bound = engine.bound().get().major().doubleValue();
        return String.format(Locale.ROOT, "%.4f", 100 * (total - bound) / Math.max(1, Math.abs(total)));
    }

    /** The median of the runs after a warm-up; a long run is taken three times, one past the warm-up's tenfold once. */
    private Timed engine(Question question) {
        long begun = System.nanoTime();
        Timed last = once(question);
        if (last.nanos() > 10 * WARM_UP.toNanos()) {
            return last;
        }
        while (System.nanoTime() - begun < WARM_UP.toNanos()) {
            last = once(question);
        }
        List<Long> nanos = new ArrayList<>();
        begun = System.nanoTime();
        while (nanos.size() < LEAST_RUNS
                || (nanos.size() < MOST_RUNS && System.nanoTime() - begun < WARM_UP.toNanos())) {
            last = once(question);
            nanos.add(last.nanos());
        }
        nanos.sort(null);
        return new Timed(nanos.get(nanos.size() / 2), last.total(), last.bound());
    }

    private Timed once(Question question) {
        long begun = System.nanoTime();
        long until = begun + settings.engineLimit().toNanos();
        Optional<LeastCost.Best> best = LeastCost.best(question, () -> System.nanoTime() - until > 0);
        long nanos = System.nanoTime() - begun;
        return new Timed(nanos, best.map(LeastCost.Best::total), best.map(LeastCost.Best::lowerBound));
    }

    private void warmUpSolvers() {
        for (GeneralSolver solver : solvers) {
            try {
                solver.solve(
                        new PeriodModel(RandomJobs.film(99, 4, 28, 10), solver.form(), settings.mostColumns()),
                        settings.limit(),
                        settings.gap());
            } catch (PeriodModel.TooLarge tooLarge) {
                print("not warmed up: more than %s columns%n", tooLarge.columns());
            }
        }
    }

    @SuppressWarnings("SystemOut") // The table is the program's whole purpose.
    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
