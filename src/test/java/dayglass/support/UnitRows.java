package dayglass.support;

import dayglass.inventory.Unit;
import dayglass.storage.Database;
import dayglass.storage.inventory.JooqUnits;
import java.nio.file.Path;

/** Units put into a database by themselves, for tests of what is said about them. */
public final class UnitRows {
    private UnitRows() {}

    /** Adds a unit of which only its tag is known. */
    public static void add(Path file, String tag) {
        try (Database database = Database.open(file)) {
            new JooqUnits(database).add(Unit.serving(tag, Unit.Use.NONE)).fold(unit -> unit, problem -> {
                throw new IllegalStateException(problem.detail());
            });
        }
    }
}
