package dayglass.app;

import dayglass.storage.DatabaseUnusable;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.function.ToIntFunction;

/** Lends the rooms of a database to a command; apart from the commands, so that {@code cost} loads no database. */
final class OpenRooms {
    private OpenRooms() {}

    /**
     * Opens the database, does the work and closes it.
     *
     * @return the exit status
     */
    static int lend(Path databaseFile, Terminal terminal, ToIntFunction<Rooms> work) {
        try (Rooms rooms = Rooms.open(databaseFile, Clock.system(ZoneId.systemDefault()))) {
            return work.applyAsInt(rooms);
        } catch (DatabaseUnusable unusable) {
            terminal.err().println(unusable.getMessage());
            return CostCommand.FAILED;
        }
    }
}
