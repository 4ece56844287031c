package dayglass.planning.past;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.app.Rooms;
import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.cost.verdict.Choices;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.support.Served;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On 30 June 2027. */
class OwnPastTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    private static void job(Rooms rooms, String name, String first, int prep, int dark, int shoot) {
        List<Schedule.Span> spans = new ArrayList<>();
        LocalDate from = LocalDate.parse(first);
        List<DayUse> uses = List.of(DayUse.PREP, DayUse.DARK, DayUse.SHOOT);
        List<Integer> days = List.of(prep, dark, shoot);
        for (int part = 0; part < uses.size(); part++) {
            if (days.get(part) > 0) {
                spans.add(new Schedule.Span(new DateRange(from, from.plusDays(days.get(part))), uses.get(part)));
                from = from.plusDays(days.get(part));
            }
        }
        rooms.jobs()
                .add(new Job(
                        name,
                        Currency.of("EUR"),
                        Percent.ZERO,
                        Optional.empty(),
                        new Schedule(spans),
                        List.of(new Question.Need("40 mm", 1, Set.of(DayUse.SHOOT), List.of())),
                        Job.Sources.NONE));
    }

    @Test
    void onlyJobsThatAreOverCountAndOnlyWholeYearsOfThem() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            job(rooms, "Winter Quarry", "2024-03-04", 1, 2, 4);
            job(rooms, "Lantern Weir", "2024-11-04", 0, 0, 12);
            job(rooms, "Evening Mole", "2026-12-30", 1, 0, 2); // over the turn of the year
            job(rooms, "Slack Water", "2027-02-01", 0, 0, 1); // of the running year
            job(rooms, "Slow Tide", "2027-06-28", 0, 0, 3); // ends today
            job(rooms, "Dry Dock", "2025-05-05", 0, 3, 0); // used nothing
            OwnPast.Past past = rooms.ownPast().read();
            assertEquals(List.of(5, 12, 3, 1), past.lengths());
            assertEquals(List.of(2, 0, 1), past.perYear());
            assertEquals(1, past.jobs().get(0).prepDays());
        }
    }

    @Test
    void theRunningYearCountsWhereThereIsNoOtherAndNothingWhereThereIsNothing() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            assertEquals(List.of(), rooms.ownPast().read().perYear());
            job(rooms, "Slack Water", "2027-02-01", 0, 0, 1);
            job(rooms, "Lantern Weir", "2027-03-01", 0, 0, 2);
            assertEquals(List.of(2), rooms.ownPast().read().perYear());
        }
    }

    @Test
    void whatWasSoldSaysWhatItBrought() {
        try (Rooms rooms = Served.roomsAt(folder, "2027-06-30")) {
            Unit plain = Unit.serving("Q-9", Unit.Use.NONE);
            rooms.shelf()
                    .units()
                    .add(new Unit(
                            plain.tag(),
                            plain.model(),
                            plain.serial(),
                            new Holding.Owned(
                                    Optional.of(LocalDate.of(2024, 1, 10)), Optional.of(Choices.euros("5000")), "", ""),
                            plain.value(),
                            plain.papers(),
                            plain.accessories(),
                            plain.use(),
                            Optional.of(new Unit.Departure(
                                    LocalDate.of(2026, 1, 9), "sold", Optional.of(Choices.euros("4100"))))));
            assertEquals(23, rooms.ownPast().read().sales().get(0).months());
            assertEquals(
                    Choices.euros("4100"), rooms.ownPast().read().sales().get(0).soldFor());
        }
    }
}
