package dayglass.books.gear;

import dayglass.base.Money;
import dayglass.base.Shares;
import dayglass.cost.scenario.VerdictQuestion.WrittenOff;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * A unit whose price is written off in a job's books.
 *
 * @param job whose books those are; a house may keep a job for its own gear
 * @param price in the job's currency, before tax that comes back
 * @param inService the first day on which it could serve
 * @param costCode of what is posted for it; empty where the job has no chart
 * @param depreciation how, as it was asked for, in JSON
 * @param writtenOff what that comes to by year
 */
public record Gear(
        Job.Id job,
        Unit.Id unit,
        Money price,
        LocalDate inService,
        String costCode,
        String depreciation,
        WrittenOff writtenOff) {

    /** The number of gear. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * What is written off up to the end of a day, by days within the year. Years begin on the first day of service; those
     * of a published table are calendar years, the first what is left of one.
     */
    public Money writtenOffThrough(LocalDate day) {
        Money sum = Money.zero(price.currency());
        LocalDate from = inService;
        for (int year = 0; year < writtenOff.years().size() && !day.isBefore(from); year++) {
            LocalDate until =
                    byCalendarYear() ? LocalDate.of(from.getYear() + 1, 1, 1) : inService.plusYears(year + 1L);
            sum = sum.plus(part(writtenOff.years().get(year), from, day.plusDays(1), until));
            from = until;
        }
        return sum;
    }

    private boolean byCalendarYear() {
        return !writtenOff.source().isEmpty();
    }

    private static Money part(Money year, LocalDate from, LocalDate to, LocalDate until) {
        if (!to.isBefore(until)) {
            return year;
        }
        BigInteger gone = BigInteger.valueOf(ChronoUnit.DAYS.between(from, to));
        BigInteger left = BigInteger.valueOf(ChronoUnit.DAYS.between(to, until));
        return new Money(
                year.currency(),
                Shares.byWeight(year.minor(), List.of(gone, left)).get(0));
    }
}
