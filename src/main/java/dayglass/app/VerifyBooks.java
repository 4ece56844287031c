package dayglass.app;

import dayglass.storage.Database;
import dayglass.storage.DatabaseUnusable;
import dayglass.storage.books.ChainCheck;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jooq.exception.DataAccessException;

/** Checks the chain of entries and tells what it finds; apart from the command, so that {@code cost} loads no database. */
final class VerifyBooks {
    private VerifyBooks() {}

    /** The exit status is for the command. */
    static int in(Path file, Terminal terminal) {
        if (!Files.exists(file)) {
            terminal.err().println("There is no database " + file + ".");
            return CostCommand.FAILED;
        }
        try (Database database = Database.open(file)) {
            return tell(ChainCheck.of(database), terminal);
        } catch (DatabaseUnusable | DataAccessException unusable) {
            terminal.err().println(unusable.getMessage());
            return CostCommand.FAILED;
        }
    }

    private static int tell(ChainCheck.Report report, Terminal terminal) {
        if (report.findings().isEmpty()) {
            terminal.out()
                    .println(report.entries() + " entries are as they were posted; " + report.closes()
                            + " kept heads agree. The head is " + report.head() + ".");
            return 0;
        }
        report.findings().forEach(terminal.err()::println);
        return CostCommand.FAILED;
    }
}
