package dayglass.app;

import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictQuestion;
import dayglass.wire.verdict.VerdictRequestReader;
import dayglass.wire.verdict.VerdictWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code verdict FILE}: buy or rent, over years. */
@Command(
        name = "verdict",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Weighs owning a lens over its term against renting it for the same jobs: reads what is asked as JSON and"
                    + " prints both costs at present value, where they cross, and how sure that is.",
            "",
            "Ctrl-C ends the draws and prints what is known so far.",
            "Amounts and percentages are decimals in quotes, counts and days plain whole numbers. No tax advice."
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:a verdict, whatever it says",
            "1:the program failed",
            "2:the request is faulty, or the command is",
            "130:Ctrl-C ended it; what was known by then is printed whole, or nothing is"
        },
        footerHeading = "%nThe smallest request:%n",
        footer = {
            "  {\"currency\": \"EUR\",",
            "   \"purchase\": {\"price\": \"8000.00\", \"termMonths\": 36, \"resale\": {\"lossPercentPerYear\": \"9\"}},",
            "   \"jobs\": [{\"name\": \"commercials\", \"perYear\": \"12\", \"days\": 3}],",
            "   \"rates\": [{\"blocks\": [{\"days\": 1, \"price\": \"120.00\"}, {\"days\": 7, \"price\": \"360.00\"}]}]}",
            "",
            "Examples:",
            "  dayglass verdict lens.json",
            "  dayglass verdict - --json < lens.json"
        })
final class VerdictCommand implements Callable<Integer> {
    private static final int WEIGHED = 0;
    private static final int SECONDS_TO_TELL = 20;

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "the request; - for standard input")
    private String file = "";

    @Option(names = "--json", description = "print the answer, or the problem document, as JSON and nothing else")
    private boolean json;

    VerdictCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        CommandReply reply = new CommandReply(terminal, json);
        return reply.to(
                file,
                text -> VerdictRequestReader.read(text)
                        .fold(question -> weigh(question, reply), faults -> reply.faulty(text, faults)));
    }

    private int weigh(VerdictQuestion question, CommandReply reply) {
        CountDownLatch told = new CountDownLatch(1);
        AtomicBoolean stopped = new AtomicBoolean();
        Thread atStop = new Thread(() -> stop(stopped, told), "stop");
        Runtime.getRuntime().addShutdownHook(atStop);
        Progress progress = Progress.start(terminal, "weighing");
        try {
            Verdict verdict = Verdict.of(question, stopped::get, progress::draws);
            progress.end();
            reply.print(VerdictWriter.write(verdict), () -> VerdictTable.of(verdict));
        } finally {
            progress.end();
            told.countDown();
            forget(atStop);
        }
        return WEIGHED;
    }

    /** Ctrl-C: what is known so far is printed before the program ends. */
    private static void stop(AtomicBoolean stopped, CountDownLatch told) {
        stopped.set(true);
        try {
            boolean inTime = told.await(SECONDS_TO_TELL, TimeUnit.SECONDS);
            if (!inTime) {
                Thread.currentThread().interrupt();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean forget(Thread hook) {
        try {
            return Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            // The hook is running, which is what it was for.
            return false;
        }
    }
}
