package dayglass.app;

import dayglass.cost.plan.LeastCost;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The one door into the program. */
@Command(
        name = "dayglass",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description =
                "Finds the cheapest way to get a job's lenses, own, buy or rent, and whether a lens gives the picture.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  dayglass cost job.json                 the plan as a table",
            "  dayglass cost job.json --json          the answer as JSON",
            "  dayglass cost - --json < job.json      the same, from standard input",
            "  dayglass fit lens.json                 does a lens give the picture on a camera",
            "  dayglass verdict lens.json             buy or rent it, over years",
            "  dayglass demo                          the main job on an invented one",
            "  dayglass serve                         pages and REST at http://127.0.0.1:8080/",
            "  dayglass import job.json               a request becomes a stored job",
            "  dayglass backup --to FOLDER            the database and every picture, also while it is served",
            "  dayglass books verify --db FILE        is every entry of the books as it was posted",
            "  dayglass help cost                     what a request holds, and the exit statuses"
        },
        subcommands = CommandLine.HelpCommand.class)
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        long startedNanos = System.nanoTime();
        // Pictures are drawn, never shown in a window.
        System.setProperty("java.awt.headless", "true");
        System.exit(run(Terminal.ofProcess(), startedNanos, arguments));
    }

    /**
     * Runs a command.
     *
     * @param startedNanos when the program began, by {@link System#nanoTime}: a time limit is for the whole
     * @return the exit status
     */
    static int run(Terminal terminal, long startedNanos, String... arguments) {
        CommandLine commands = new CommandLine(new Main())
                .addSubcommand(new CostCommand(terminal, startedNanos, LeastCost::solve))
                .addSubcommand(new FitCommand(terminal))
                .addSubcommand(new VerdictCommand(terminal))
                .addSubcommand(new DemoCommand(terminal))
                .addSubcommand(new ServeCommand(terminal))
                .addSubcommand(new ImportCommand(terminal))
                .addSubcommand(new ExportCommand(terminal))
                .addSubcommand(new BackupCommand(terminal))
                .addSubcommand(BooksCommand.of(terminal))
                .setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpWidth(100)
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    terminal.err().println("The program failed; what went wrong: " + failure);
                    return CommandLine.ExitCode.SOFTWARE;
                });
        if (arguments.length == 0) {
            commands.usage(commands.getErr());
            return CommandLine.ExitCode.USAGE;
        }
        return commands.execute(arguments);
    }

    /** The program's version, as the build wrote it down. */
    static String version() {
        try (InputStream in = Main.class.getResourceAsStream("/dayglass/version.txt")) {
            return new String(
                            Objects.requireNonNull(in, "no version was built in")
                                    .readAllBytes(),
                            StandardCharsets.UTF_8)
                    .strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"dayglass " + version()};
        }
    }
}
