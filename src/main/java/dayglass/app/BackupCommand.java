package dayglass.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code backup}: a copy of the database and every picture. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Copies a database and every picture in it to a new folder, also while it is served.",
            "",
            "To use the copy, name it to any command by --db. To bring it back, stop the program and put the copy and"
                    + " its folder of pictures in the place of the old ones, without the old -wal and -shm files."
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:everything is copied",
            "1:it cannot be made, or pictures are missing (they are named)",
            "2:the command is faulty"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  dayglass backup --db house.db --to /media/disk/2027-04-12",
            "  dayglass serve --db /media/disk/2027-04-12/house.db"
        })
final class BackupCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Option(
            names = "--db",
            paramLabel = "FILE",
            defaultValue = "dayglass.db",
            description = "the database (default: ${DEFAULT-VALUE})")
    private Path file = Path.of("dayglass.db");

    @Option(names = "--to", paramLabel = "FOLDER", required = true, description = "a folder that is new or empty")
    private Path folder = Path.of(".");

    BackupCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return MakeBackup.of(file, folder, terminal);
    }
}
