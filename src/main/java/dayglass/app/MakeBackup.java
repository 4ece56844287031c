package dayglass.app;

import dayglass.storage.DatabaseUnusable;
import dayglass.storage.backup.Backup;
import java.nio.file.Path;

/** Makes a backup and tells what is in it; apart from the command, so that {@code cost} loads no database. */
final class MakeBackup {
    private MakeBackup() {}

    /** The exit status is for the command. */
    static int of(Path file, Path folder, Terminal terminal) {
        try {
            return tell(Backup.make(file, folder), terminal);
        } catch (Backup.Impossible | DatabaseUnusable impossible) {
            terminal.err().println(impossible.getMessage());
            return CostCommand.FAILED;
        }
    }

    private static int tell(Backup backup, Terminal terminal) {
        terminal.out()
                .println(backup.database() + " and " + backup.pictures()
                        + (backup.pictures() == 1 ? " picture." : " pictures."));
        backup.missing().forEach(picture -> terminal.err().println("This picture is gone or damaged: " + picture));
        return backup.missing().isEmpty() ? 0 : CostCommand.FAILED;
    }
}
