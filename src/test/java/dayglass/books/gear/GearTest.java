package dayglass.books.gear;

import static dayglass.books.BookHouse.eur;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Money;
import dayglass.cost.ownership.Depreciation;
import dayglass.cost.scenario.VerdictQuestion.WrittenOff;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is written off by days within the years that are published. */
class GearTest {
    private static Gear gear(String price, LocalDate inService, WrittenOff plan) {
        return new Gear(new Job.Id(1), new Unit.Id(1), eur(price), inService, "", "{}", plan);
    }

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }

    /** SLN(30000, 7500, 10) is 2250 a year: spreadsheet documentation. */
    @Test
    void straightLineByDaysOfItsOwnYears() {
        Gear gear = gear(
                "30000.00",
                day("2027-03-01"),
                new WrittenOff("straight line", "", Depreciation.straightLine(eur("30000"), eur("7500"), 10)));
        assertEquals(eur("0.00"), gear.writtenOffThrough(day("2027-02-28")));
        assertEquals(eur("2250.00"), gear.writtenOffThrough(day("2028-02-29")), "a leap year's last day");
        assertEquals(eur("4500.00"), gear.writtenOffThrough(day("2029-02-28")));
        assertEquals(eur("22500.00"), gear.writtenOffThrough(day("2037-02-28")));
        assertEquals(eur("22500.00"), gear.writtenOffThrough(day("2099-01-01")));
        // 31 of the 366 days from 1 March 2027 to 29 February 2028: 190.5737…, by hand.
        assertEquals(eur("190.57"), gear.writtenOffThrough(day("2027-03-31")));
    }

    /** DDB(2400, 300, 10): 480, 384, 307.2 in the first years: spreadsheet documentation, the first; the rest ours. */
    @Test
    void decliningBalance() {
        Gear gear = gear(
                "2400.00",
                day("2027-01-01"),
                new WrittenOff(
                        "declining balance",
                        "",
                        Depreciation.declining(eur("2400"), eur("300"), 10, BigDecimal.valueOf(2), false)));
        assertEquals(eur("480.00"), gear.writtenOffThrough(day("2027-12-31")));
        assertEquals(eur("864.00"), gear.writtenOffThrough(day("2028-12-31")));
        assertEquals(eur("1171.20"), gear.writtenOffThrough(day("2029-12-31")));
    }

    /** Table A-1, five years, half-year convention: IRS Publication 946. Its years are calendar years. */
    @Test
    void aPublishedTableGoesByCalendarYears() {
        List<BigDecimal> percents = Stream.of("20.00", "32.00", "19.20", "11.52", "11.52", "5.76")
                .map(BigDecimal::new)
                .toList();
        Gear gear = gear(
                "1000.00",
                day("2027-10-01"),
                new WrittenOff("A-1", "IRS Publication 946", Depreciation.byTable(eur("1000"), percents)));
        assertEquals(eur("200.00"), gear.writtenOffThrough(day("2027-12-31")));
        assertEquals(eur("520.00"), gear.writtenOffThrough(day("2028-12-31")));
        assertEquals(eur("1000.00"), gear.writtenOffThrough(day("2032-12-31")));
    }

    /** Whatever the days, the parts add up to the whole. */
    @Test
    void dayByDayNothingIsLost() {
        Gear gear = gear(
                "99.97",
                day("2028-02-29"),
                new WrittenOff("straight line", "", Depreciation.straightLine(eur("99.97"), eur("0"), 3)));
        Money before = eur("0");
        for (LocalDate at = day("2028-02-01"); at.isBefore(day("2031-04-01")); at = at.plusDays(1)) {
            Money now = gear.writtenOffThrough(at);
            assertEquals(true, now.compareTo(before) >= 0, at.toString());
            before = now;
        }
        assertEquals(eur("99.97"), before);
    }
}
