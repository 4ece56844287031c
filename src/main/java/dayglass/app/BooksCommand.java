package dayglass.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code books}: what is done to the books as a whole. */
@Command(
        name = "books",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Checks the books of a database.",
        subcommands = CommandLine.HelpCommand.class)
final class BooksCommand implements Callable<Integer> {
    private final Terminal terminal;

    BooksCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** With the commands below it. */
    static CommandLine of(Terminal terminal) {
        return new CommandLine(new BooksCommand(terminal)).addSubcommand(new Verify(terminal));
    }

    @Override
    public Integer call() {
        terminal.err().println("Say what to do: books verify --db FILE");
        return CommandLine.ExitCode.USAGE;
    }

    /** {@code books verify}: whether every entry is as it was posted. */
    @Command(
            name = "verify",
            mixinStandardHelpOptions = true,
            versionProvider = Main.Version.class,
            description = {
                "Works out the chain of hashes over every entry again, compares it with the heads kept at each close, and"
                        + " looks whether entries are missing at the end."
            },
            exitCodeListHeading = "%nExit status:%n",
            exitCodeList = {
                "0:every entry is as it was posted",
                "1:something was altered or is missing (it is told), or the database cannot be used",
                "2:the command is faulty"
            },
            footerHeading = "%nExample:%n",
            footer = "  dayglass books verify --db house.db")
    static final class Verify implements Callable<Integer> {
        private final Terminal terminal;

        @Option(
                names = "--db",
                paramLabel = "FILE",
                defaultValue = "dayglass.db",
                description = "the database (default: ${DEFAULT-VALUE})")
        private Path file = Path.of("dayglass.db");

        Verify(Terminal terminal) {
            this.terminal = terminal;
        }

        @Override
        public Integer call() {
            return VerifyBooks.in(file, terminal);
        }
    }
}
