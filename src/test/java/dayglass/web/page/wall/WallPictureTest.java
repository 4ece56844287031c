package dayglass.web.page.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.DateRange;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Stay;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WallPictureTest {
    private static final ZoneId PARIS = ZoneId.of("Europe/Paris");
    private static final WallDays DAYS =
            new WallDays(DateRange.inclusive(LocalDate.of(2027, 10, 25), LocalDate.of(2027, 11, 7)), PARIS);

    /** Paris is at +02:00 up to 31 October 2027 and at +01:00 after (IANA time zone database); a day is 30 wide. */
    @ParameterizedTest
    @CsvSource({
        // out,                  back,                 went,                 now,                  bars
        "2027-10-26T10:00+02:00, 2027-10-27T22:00+02:00, '',                     2027-10-25T00:00+02:00, booking 43-88 turnaround 88-91",
        "2027-10-31T00:00+02:00, 2027-11-01T00:00+01:00, '',                     2027-10-25T00:00+02:00, booking 180-210 turnaround 210-213",
        "2027-10-26T12:00+02:00, 2027-10-28T12:00+02:00, 2027-10-26T12:00+02:00, 2027-10-27T12:00+02:00, out 45-105 turnaround 105-108",
        "2027-10-26T12:00+02:00, 2027-10-28T12:00+02:00, 2027-10-26T12:00+02:00, 2027-11-01T12:00+01:00, out 45-105 late 105-225",
        "2027-10-20T12:00+02:00, 2027-10-25T12:00+02:00, '',                     2027-10-25T00:00+02:00, booking 0-15 turnaround 15-18",
        "2027-10-20T12:00+02:00, 2027-10-22T12:00+02:00, '',                     2027-10-25T00:00+02:00, ''",
        "2027-11-07T12:00+01:00, 2027-11-20T12:00+01:00, '',                     2027-10-25T00:00+02:00, booking 405-420"
    })
    void barsStandWhereTheirTimesAreOnTheHousesClock(String out, String back, String went, String now, String bars) {
        Occupation occupation = new Occupation(
                new Unit.Id(1),
                Occupation.Kind.BOOKING,
                Stay.of(moment(out), moment(back), Duration.ofHours(2)),
                "Lantern Weir",
                false,
                went.isEmpty()
                        ? Occupation.Handling.NOT_YET
                        : new Occupation.Handling(Optional.of(moment(went)), Optional.empty()),
                new Occupation.Entered(new Person.Id(1), moment(out)),
                Optional.empty());
        assertEquals(
                bars,
                WallPicture.bars(occupation, DAYS, moment(now), PARIS).stream()
                        .map(bar -> bar.kind() + " " + bar.x() + "-" + (bar.x() + bar.width()))
                        .collect(Collectors.joining(" ")));
    }

    private static Instant moment(String text) {
        return java.time.OffsetDateTime.parse(text).toInstant();
    }
}
