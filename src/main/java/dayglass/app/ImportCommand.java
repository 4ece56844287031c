package dayglass.app;

import dayglass.base.Problem;
import dayglass.cost.plan.Question;
import dayglass.wire.costing.CostingRequestReader;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code import FILE}: a costing request becomes a stored job. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Makes a stored job of a costing request, with its suppliers, rate cards, offers and owned units.",
            "",
            "What is there already with the same facts is used again. Either all of it is stored or nothing."
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:the job is stored", "1:the program failed", "2:the request is faulty, or the command is"},
        footerHeading = "%nExample:%n",
        footer = "  dayglass import job.json --db house.db")
final class ImportCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "the request; - for standard input")
    private String file = "";

    @Mixin
    private DatabaseOption database = new DatabaseOption();

    ImportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return RequestFile.read(file, terminal.in())
                .fold(this::importText, faults -> refuse(faults.get(0).message(), CostCommand.FAULTY));
    }

    private int importText(byte[] text) {
        return CostingRequestReader.read(text)
                .fold(
                        question -> OpenRooms.lend(database.file(), terminal, rooms -> store(rooms, question, text)),
                        faults -> refuse(RefusalText.faulty(text, faults), CostCommand.FAULTY));
    }

    private int store(Rooms rooms, Question question, byte[] text) {
        return rooms.importJob()
                .importFrom(question)
                .fold(
                        job -> {
                            terminal.out()
                                    .println("Job " + job.id().number() + " is stored: "
                                            + job.facts().name());
                            return 0;
                        },
                        problem -> refuse(words(text, problem), CostCommand.FAULTY));
    }

    private static String words(byte[] text, Problem problem) {
        return problem.faults().isEmpty() ? problem.detail() : RefusalText.faulty(text, problem.faults());
    }

    private int refuse(String words, int status) {
        terminal.err().println(words.stripTrailing());
        return status;
    }
}
