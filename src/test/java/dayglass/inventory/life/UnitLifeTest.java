package dayglass.inventory.life;

import static dayglass.inventory.life.Records.HOUSE;
import static dayglass.inventory.life.Records.at;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.house.Change;
import dayglass.house.Person;
import dayglass.inventory.LensSet;
import dayglass.inventory.LensSets;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Handling;
import dayglass.inventory.condition.ConditionNote;
import dayglass.inventory.condition.Observation;
import dayglass.inventory.condition.Part;
import dayglass.inventory.condition.Severity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a unit's page tells: its story with names and words, and its money by currency. */
class UnitLifeTest {
    private static final Instant NOW = at("2027-06-30T12:00");
    private static final Person.Id PORTER = new Person.Id(2);
    private static final Occupation.Id FIRST = new Occupation.Id(1);

    private static OccupationVersions.Version version(String at, String due, Handling handling) {
        return new OccupationVersions.Version(FIRST, at(at), PORTER, at(due), handling, false);
    }

    private static Stored<ConditionNote.Id, ConditionNote> note(long id, String at, int severity, long... resolves) {
        return new Stored<>(
                new ConditionNote.Id(id),
                1,
                new ConditionNote(
                        Records.UNIT,
                        at(at),
                        Records.CLERK,
                        new Observation(Part.FRONT_GLASS, "haze", Severity.of(severity), false, "a thin film"),
                        java.util.Arrays.stream(resolves)
                                .mapToObj(ConditionNote.Id::new)
                                .toList(),
                        List.of()));
    }

    private static List<String> told(UnitRecords records) {
        return UnitLife.of(records, Lettings.NONE, HOUSE, NOW).timeline().stream()
                .map(event -> event.at().atZone(Records.PARIS).toLocalDate() + " " + event.what() + " " + event.words()
                        + event.by().map(person -> " by " + person.number()).orElse(""))
                .toList();
    }

    @Test
    void everythingThatHappenedIsOneStoryTheNewestFirst() {
        UnitRecords some = Records.bought(
                        "2027-01-04",
                        new Unit.Departure(LocalDate.of(2027, 6, 29), "sold", Optional.of(Money.of("EUR", "9000.00"))))
                .wasOut("2027-05-03T15:00", "2027-05-10T10:00")
                .benched("2027-05-12T09:00", "2027-05-12T17:00", Money.of("GBP", "165.00"))
                .away("2027-05-20T09:00", "2027-05-21T17:00")
                .kept();
        Instant out = at("2027-05-03T15:00");
        UnitRecords all = new UnitRecords(
                some.unit(),
                Optional.of(
                        new Change(at("2027-01-05T10:00"), PORTER, "unit", 1, Change.Deed.ADDED, Optional.of("{}"))),
                List.of(note(4, "2027-02-01T11:00", 3), note(5, "2027-02-09T11:00", 0, 4)),
                some.occupations(),
                List.of(
                        version("2027-05-01T09:00", "2027-05-08T10:00", Handling.NOT_YET),
                        version(
                                "2027-05-03T15:05",
                                "2027-05-08T10:00",
                                new Handling(Optional.of(out), Optional.empty())),
                        version(
                                "2027-05-10T10:05",
                                "2027-05-10T10:00",
                                new Handling(Optional.of(out), Optional.of(at("2027-05-10T10:00"))))),
                List.of(new HandOver.KeptOverride(
                        FIRST, PORTER, at("2027-05-03T15:05"), "Q-1 is in quarantine.", "the client insists")),
                List.of(new LensSets.Joined(
                        "Coast set",
                        new LensSet.Membership(
                                Records.UNIT, at("2027-03-01T10:00"), Optional.of(at("2027-03-08T10:00"))))));
        assertEquals(
                List.of(
                        "2027-06-29 sold for 9000.00 EUR",
                        "2027-05-20 away Lantern Weir",
                        "2027-05-20 absence entered \"Lantern Weir\", 20 May 2027 to 21 May 2027 by 1",
                        "2027-05-12 on the bench Lantern Weir: rear group out; shimmed; cost 165.00 GBP",
                        "2027-05-12 bench visit entered \"Lantern Weir\", 12 May 2027 to 12 May 2027 by 1",
                        "2027-05-10 came back from \"Lantern Weir\", 2 days late by 2",
                        "2027-05-03 let out all the same Q-1 is in quarantine. Reason: the client insists by 2",
                        "2027-05-03 went out for \"Lantern Weir\" by 2",
                        "2027-05-03 booked \"Lantern Weir\", 3 May 2027 to 10 May 2027 by 1",
                        "2027-03-08 left a set Coast set",
                        "2027-03-01 joined a set Coast set",
                        "2027-02-09 noted haze, front glass, severity 0: a thin film; resolves note 4 by 1",
                        "2027-02-01 noted haze, front glass, severity 3: a thin film by 1",
                        "2027-01-05 put on the shelf  by 2",
                        "2027-01-04 bought for 12000.00 EUR, order O-7"),
                told(all));
    }

    @ParameterizedTest
    @CsvSource({
        // due, came back, told
        "2027-05-08T10:00, 2027-05-08T10:59, on time",
        "2027-05-08T10:00, 2027-05-08T09:01, on time",
        "2027-05-08T10:00, 2027-05-08T11:00, 1 hour late",
        "2027-05-08T10:00, 2027-05-09T09:00, 23 hours late",
        "2027-05-08T10:00, 2027-05-09T10:00, 1 day late",
        "2027-05-08T10:00, 2027-05-06T08:00, 2 days early"
    })
    void whatCameBackIsToldEarlyOrLateByWhenItWasDueThen(String due, String back, String told) {
        UnitRecords some = Records.bought("2027-01-04", null)
                .wasOut("2027-05-03T15:00", back)
                .kept();
        Optional<Instant> out = Optional.of(at("2027-05-03T15:00"));
        UnitRecords records = new UnitRecords(
                some.unit(),
                some.entered(),
                some.notes(),
                some.occupations(),
                List.of(
                        version("2027-05-03T15:00", due, new Handling(out, Optional.empty())),
                        version(back, back, new Handling(out, Optional.of(at(back))))),
                some.overrides(),
                some.sets());
        assertEquals(
                "came back from \"Lantern Weir\", " + told + " by 2",
                told(records).get(0).substring("2027-05-08 ".length()));
    }

    @Test
    void aBookingThatWasCancelledSaysByWhom() {
        UnitRecords some = Records.bought("2027-01-04", null)
                .booked("2027-07-03T15:00", "2027-07-10T10:00")
                .kept();
        UnitRecords records = new UnitRecords(
                some.unit(),
                some.entered(),
                some.notes(),
                some.occupations(),
                List.of(new OccupationVersions.Version(
                        FIRST, at("2027-06-20T10:00"), PORTER, at("2027-07-10T10:00"), Handling.NOT_YET, true)),
                some.overrides(),
                some.sets());
        assertEquals("2027-06-20 cancelled \"Lantern Weir\" by 2", told(records).get(1));
    }

    @Test
    void amountsAreSummedByCurrencyAndNeverAcross() {
        MoneySoFar money = UnitLife.of(
                        Records.bought("2027-01-04", null)
                                .benched("2027-02-02T09:00", "2027-02-02T17:00", Money.of("GBP", "165.00"))
                                .benched("2027-03-02T09:00", "2027-03-02T17:00", Money.of("EUR", "80.50"))
                                .benched("2027-04-02T09:00", "2027-04-02T17:00", Money.of("GBP", "35.00"))
                                .kept(),
                        Lettings.NONE,
                        HOUSE,
                        NOW)
                .figures()
                .money();
        assertEquals(List.of(Money.of("EUR", "12080.50"), Money.of("GBP", "200.00")), MoneySoFar.totals(money.cost()));
        assertEquals(List.of(), money.earned());
    }
}
