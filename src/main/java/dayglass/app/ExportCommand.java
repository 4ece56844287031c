package dayglass.app;

import dayglass.job.Job;
import dayglass.wire.JsonPrint;
import dayglass.wire.costing.CostingRequestWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code export JOB}: a stored job as the costing request that it resolves to. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Prints a stored job as a costing request, with the rate cards in force on its first day.",
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:it is printed", "1:the program failed", "2:there is no such job, or it does not resolve"},
        footerHeading = "%nExample:%n",
        footer = "  dayglass export 3 --db house.db > job.json")
final class ExportCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "JOB", description = "the id of the job, as import and the pages show it")
    private long id;

    @Mixin
    private DatabaseOption database = new DatabaseOption();

    ExportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return OpenRooms.lend(database.file(), terminal, this::export);
    }

    private int export(Rooms rooms) {
        return rooms.jobs()
                .find(new Job.Id(id))
                .map(job -> export(rooms, job.facts()))
                .orElseGet(() -> refuse("There is no job with the id " + id + "."));
    }

    private int export(Rooms rooms, Job job) {
        return rooms.resolveJob()
                .resolve(job)
                .fold(
                        question -> {
                            terminal.out().print(JsonPrint.pretty(CostingRequestWriter.write(question)));
                            terminal.out().flush();
                            return 0;
                        },
                        problem -> refuse(problem.detail()));
    }

    private int refuse(String words) {
        terminal.err().println(words);
        return CostCommand.FAULTY;
    }
}
