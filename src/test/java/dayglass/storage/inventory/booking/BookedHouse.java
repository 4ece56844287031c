package dayglass.storage.inventory.booking;

import dayglass.app.Rooms;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Whereabouts;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A house with units, for tests that book them. */
final class BookedHouse implements AutoCloseable {
    final Rooms rooms;
    final List<Unit.Id> units = new ArrayList<>();

    BookedHouse(Path folder, int count, String zone) {
        rooms = Rooms.open(
                folder.resolve("house.db"), Clock.fixed(Instant.parse("2027-01-01T12:00:00Z"), ZoneId.of(zone)));
        for (int number = 1; number <= count; number++) {
            units.add(rooms.shelf()
                    .units()
                    .add(Unit.serving("U-" + number, new Unit.Use(Map.of("40 mm", 1), List.of())))
                    .fold(done -> done.id(), problem -> {
                        throw new AssertionError(problem.toString());
                    }));
        }
    }

    Whereabouts whereabouts() {
        return rooms.whereAreUnits();
    }

    /** Whether it could be entered. */
    boolean enter(Unit.Id unit, Kind kind, Instant out, Duration length) {
        return whereabouts()
                .bookUnits()
                .add(List.of(unit), new BookUnits.Entry(kind, out, out.plus(length), "Lantern Weir", Optional.empty()))
                .fold(done -> true, problem -> false);
    }

    @Override
    public void close() {
        rooms.close();
    }
}
