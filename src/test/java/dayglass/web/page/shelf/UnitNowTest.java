package dayglass.web.page.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Stored;
import dayglass.house.Person;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Handling;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.Observation;
import dayglass.inventory.condition.Part;
import dayglass.inventory.condition.Severity;
import dayglass.inventory.life.UnitRecords;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a unit is, at noon of 1 June 2027 in Paris. */
class UnitNowTest {
    private static final ZoneId PARIS = ZoneId.of("Europe/Paris");

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(PARIS).toInstant();
    }

    private static Optional<Instant> maybe(String local) {
        return local.isEmpty() ? Optional.empty() : Optional.of(at(local));
    }

    private static Stored<Occupation.Id, Occupation> entered(
            String kind, String out, String back, String went, String came) {
        return new Stored<>(
                new Occupation.Id(1),
                1,
                new Occupation(
                        new Unit.Id(1),
                        Kind.of(kind).orElseThrow(),
                        Stay.of(at(out), at(back), Duration.ofHours(kind.equals("booking") ? 2 : 0)),
                        "Weir",
                        false,
                        new Handling(maybe(went), maybe(came)),
                        new Occupation.Entered(new Person.Id(1), at(out)),
                        Optional.empty()));
    }

    private static String words(
            Stream<Stored<Occupation.Id, Occupation>> occupations, int severity, boolean quarantine, String sold) {
        Unit unit = new Unit(
                "Q-1",
                Optional.empty(),
                Optional.empty(),
                Holding.Owned.UNRECORDED,
                Optional.empty(),
                Unit.Papers.NONE,
                List.of(),
                Unit.Use.NONE,
                sold.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Unit.Departure(LocalDate.parse(sold), "sold", Optional.empty())));
        List<Stored<ConditionNote.Id, ConditionNote>> notes = List.of(new Stored<>(
                new ConditionNote.Id(1),
                1,
                new ConditionNote(
                        new Unit.Id(1),
                        at("2027-05-01T10:00"),
                        new Person.Id(1),
                        new Observation(Part.FOCUS, "play", Severity.of(severity), quarantine, ""),
                        List.of(),
                        List.of())));
        UnitRecords records =
                new UnitRecords(unit, Optional.empty(), notes, occupations.toList(), List.of(), List.of(), List.of());
        return new UnitNow(records, at("2027-06-01T12:00"), PARIS).words();
    }

    @ParameterizedTest
    @CsvSource({
        // kind,  out,              back,             went,             came,             words
        "booking, 2027-06-05T15:00, 2027-06-09T10:00, '', '', 'Free until 5 Jun 2027, 15:00, then booked for \"Weir\"'",
        "bench,   2027-06-05T15:00, 2027-06-09T10:00, '', '', 'Free until 5 Jun 2027, 15:00, then on the bench: Weir'",
        "absence, 2027-06-05T15:00, 2027-06-09T10:00, '', '', 'Free until 5 Jun 2027, 15:00, then away: Weir'",
        "booking, 2027-06-01T11:00, 2027-06-09T10:00, '', '', 'Booked for \"Weir\" since 1 Jun 2027, 11:00, not handed over yet'",
        "booking, 2027-05-30T15:00, 2027-06-09T10:00, 2027-05-30T15:00, '', 'Out for \"Weir\", due back 9 Jun 2027, 10:00'",
        "booking, 2027-05-30T15:00, 2027-06-01T10:00, 2027-05-30T15:00, '', 'Late: out for \"Weir\", was due back 1 Jun 2027, 10:00'",
        "booking, 2027-05-30T15:00, 2027-06-01T11:00, 2027-05-30T15:00, 2027-06-01T11:00, 'Back, free again from 1 Jun 2027, 13:00'",
        "booking, 2027-05-30T15:00, 2027-06-01T10:00, 2027-05-30T15:00, 2027-06-01T10:00, Free",
        "bench,   2027-06-01T09:00, 2027-06-02T17:00, '', '', 'On the bench until 2 Jun 2027, 17:00: Weir'",
        "bench,   2027-06-01T09:00, 2027-06-01T12:00, '', '', Free", // half-open
        "absence, 2027-06-01T12:00, 2027-06-02T17:00, '', '', 'Away until 2 Jun 2027, 17:00: Weir'"
    })
    void itSaysWhereTheUnitIs(String kind, String out, String back, String went, String came, String words) {
        assertEquals(words, words(Stream.of(entered(kind, out, back, went, came)), 0, false, ""));
    }

    @ParameterizedTest
    @CsvSource({
        "2, false, '',         Free",
        "3, false, '',         Not healthy: it is not to be promised",
        "1, true,  '',         Quarantined: it stays in until a note resolves it",
        "1, true,  2027-06-01, Sold on 1 Jun 2027",
        "0, false, 2027-06-02, Free"
    })
    void aUnitThatIsInMayHaveToStayInOrBeGone(int severity, boolean quarantine, String sold, String words) {
        assertEquals(words, words(Stream.empty(), severity, quarantine, sold));
    }

    @ParameterizedTest
    @CsvSource({"true, 'Out for \"Weir\", due back 9 Jun 2027, 10:00'"})
    void whatIsOutIsSaidToBeOutWhateverItsCondition(boolean quarantine, String words) {
        assertEquals(
                words,
                words(
                        Stream.of(entered("booking", "2027-05-30T15:00", "2027-06-09T10:00", "2027-05-30T15:00", "")),
                        4,
                        quarantine,
                        ""));
    }
}
