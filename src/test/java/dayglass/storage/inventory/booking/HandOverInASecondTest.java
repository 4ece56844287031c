package dayglass.storage.inventory.booking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.app.Rooms;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole seconds are kept; a clock that knows parts of them must not make a unit come back as it leaves. */
class HandOverInASecondTest {
    @TempDir
    Path folder;

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(value -> value, problem -> {
            throw new AssertionError(problem);
        });
    }

    @ParameterizedTest
    @CsvSource({
        // handed over, taken back, went out, came back
        "2027-04-12T09:00:00.4Z, 2027-04-12T09:00:00.7Z, 2027-04-12T09:00:00Z, 2027-04-12T09:00:00Z",
        "2027-04-12T09:00:00.4Z, 2027-04-12T09:00:01.1Z, 2027-04-12T09:00:00Z, 2027-04-12T09:00:01Z",
        "2027-04-12T15:00:00.9Z, 2027-04-12T15:00:00.9Z, 2027-04-12T15:00:00Z, 2027-04-12T15:00:00Z"
    })
    void aUnitGoesOutBeforeItsTimeAndComesBackWithinASecond(Instant out, Instant back, Instant went, Instant came) {
        try (Rooms rooms = Rooms.open(folder.resolve("house.db"), Clock.fixed(out, ZoneOffset.UTC))) {
            Unit.Id unit = done(rooms.shelf().units().add(Unit.serving("Q-1", Unit.Use.NONE)))
                    .id();
            Stored<Occupation.Id, Occupation> booked = done(rooms.whereAreUnits()
                            .bookUnits()
                            .add(
                                    List.of(unit),
                                    new BookUnits.Entry(
                                            Occupation.Kind.BOOKING,
                                            Instant.parse("2027-04-12T15:00:00Z"),
                                            Instant.parse("2027-04-14T10:00:00Z"),
                                            "Salt Lane",
                                            Optional.empty())))
                    .get(0);
            HandOver handOver = rooms.whereAreUnits().handOver();
            done(handOver.out(booked, out, Optional.empty()));
            done(handOver.back(
                    rooms.whereAreUnits().occupations().find(booked.id()).orElseThrow(), back));
            Occupation kept = rooms.whereAreUnits()
                    .occupations()
                    .find(booked.id())
                    .orElseThrow()
                    .facts();
            assertEquals(new Occupation.Handling(Optional.of(went), Optional.of(came)), kept.handling());
        }
    }
}
