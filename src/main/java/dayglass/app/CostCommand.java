package dayglass.app;

import dayglass.cost.plan.Costing;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.wire.Problem;
import dayglass.wire.costing.AnswerWriter;
import dayglass.wire.costing.CostingProblems;
import dayglass.wire.costing.CostingRequestReader;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code cost FILE}: the least plan of a costing request. */
@Command(
        name = "cost",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Costs a job: reads a request as JSON and prints the cheapest plan with its proof.",
            "",
            "A request holds the job's schedule, what it needs on which days, and every way to get it: rentals with "
                    + "their blocks, purchases, owned units."
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:a plan was found",
            "1:the program failed, or no plan was found in time",
            "2:the request is faulty, or the command is",
            "3:no plan exists"
        },
        footerHeading = "%nThe smallest request:%n",
        footer = {
            "  {\"job\": \"Two days\", \"currency\": \"EUR\",",
            "   \"schedule\": [{\"from\": \"2027-04-05\", \"to\": \"2027-04-06\", \"use\": \"shoot\"}],",
            "   \"needs\": [{\"slot\": \"40 mm\", \"count\": 1}],",
            "   \"rentals\": [{\"id\": \"day-40\", \"supplier\": \"Corner House\", \"covers\": {\"40 mm\": 1},",
            "                \"blocks\": [{\"days\": 1, \"price\": \"90.00\"}]}]}",
            "",
            "Examples:",
            "  dayglass cost job.json",
            "  dayglass cost job.json --json > answer.json",
            "  dayglass cost job.json --time-limit 10"
        })
final class CostCommand implements Callable<Integer> {
    static final int PLAN = 0;
    static final int FAILED = 1;
    static final int FAULTY = 2;
    static final int NO_PLAN = 3;

    private static final BigDecimal NANOS = BigDecimal.valueOf(1_000_000_000);
    private static final BigDecimal MOST_SECONDS = BigDecimal.valueOf(1_000_000_000);

    /** The computation behind the command. */
    @FunctionalInterface
    interface Solver {
        Costing solve(Question question, StopSignal stop);
    }

    private final Terminal terminal;
    private final long startedNanos;
    private final Solver solver;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "the request; - for standard input")
    private String file = "";

    @Option(names = "--json", description = "print the answer, or the problem document, as JSON and nothing else")
    private boolean json;

    @Option(
            names = "--time-limit",
            paramLabel = "SECONDS",
            description = "stop after so many seconds with the best plan found and what no plan can beat")
    private Optional<BigDecimal> timeLimit = Optional.empty();

    CostCommand(Terminal terminal, long startedNanos, Solver solver) {
        this.terminal = terminal;
        this.startedNanos = startedNanos;
        this.solver = solver;
    }

    @Override
    public Integer call() {
        StopSignal stop = stopSignal();
        CommandReply reply = new CommandReply(terminal, json);
        return reply.to(file, text -> cost(text, stop, reply));
    }

    private StopSignal stopSignal() {
        if (timeLimit.isEmpty()) {
            return StopSignal.NEVER;
        }
        BigDecimal seconds = timeLimit.get();
        if (seconds.signum() <= 0 || seconds.compareTo(MOST_SECONDS) > 0) {
            throw new ParameterException(
                    spec.commandLine(), "--time-limit takes a number of seconds above 0, such as 10 or 2.5");
        }
        long limitNanos = seconds.multiply(NANOS).longValue();
        return () -> System.nanoTime() - startedNanos >= limitNanos;
    }

    private int cost(byte[] text, StopSignal stop, CommandReply reply) {
        return CostingRequestReader.read(text)
                .fold(asked -> cost(asked, stop, reply), faults -> reply.faulty(text, faults));
    }

    private int cost(Question question, StopSignal stop, CommandReply reply) {
        Progress progress = Progress.start(terminal, "costing " + question.job());
        Costing costing;
        try {
            costing = solver.solve(question, stop);
        } finally {
            progress.end();
        }
        return costing.fold(
                planned -> {
                    reply.print(AnswerWriter.write(planned.answer()), () -> CostTable.of(question, planned.answer()));
                    return PLAN;
                },
                impossible -> {
                    reply.print(
                            CostingProblems.impossible(impossible).toJson(),
                            () -> RefusalText.impossible(question, impossible));
                    return NO_PLAN;
                },
                outOfTime -> {
                    Problem problem = CostingProblems.outOfTime();
                    reply.refuse(problem, problem.detail());
                    return FAILED;
                });
    }
}
