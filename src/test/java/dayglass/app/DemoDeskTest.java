package dayglass.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo is begun on any day and at any hour. */
class DemoDeskTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-28T08:30:00Z",
                "2026-12-31T23:30:00Z",
                "2027-01-01T09:00:00Z",
                "2027-02-20T18:00:00Z",
                "2027-03-27T16:00:00Z"
            })
    void itsQuotesAndRentalsAreThere(String now, @TempDir Path folder) {
        try (Rooms rooms = Rooms.open(folder.resolve("demo.db"), Clock.fixed(Instant.parse(now), ZoneOffset.UTC))) {
            DemoCommand.job(rooms).fold(job -> job, problem -> {
                throw new AssertionError(problem.toString());
            });
            assertEquals(
                    List.of("accepted", "accepted", "open", "declined"),
                    rooms.desk().quotes().list(Optional.empty(), 10).stream()
                            .map(quote -> quote.facts().decision().word())
                            .toList());
            assertEquals(
                    List.of("out", "confirmed"),
                    rooms.desk().rentals().list(Optional.empty(), 10).stream()
                            .map(rental ->
                                    rooms.desk().letOut().now(rental).state().word())
                            .toList());
        }
    }
}
