package dayglass.inventory.worth;

import dayglass.base.DateRange;
import dayglass.cost.verdict.JobKind;
import dayglass.house.House;
import dayglass.inventory.booking.DaysOut;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.life.UnitRecords;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** The jobs on which the house had a unit out for itself within a year, by their length, the shortest first. */
final class OwnUse {
    private static final int WEEK = 7;

    private OwnUse() {}

    /** What really went out and was no letting; of a job that reaches over an end of the year, the days inside. */
    static List<JobKind> within(DateRange year, UnitRecords records, Set<Occupation.Id> let, House house, Instant now) {
        TreeMap<Integer, Integer> byLength = new TreeMap<>();
        records.occupations().stream()
                .filter(each -> !let.contains(each.id()))
                .filter(each -> each.facts().handling().wentOut().isPresent())
                .flatMap(each -> DaysOut.of(each.facts(), house, now).stream())
                .flatMap(days -> days.within(year).stream())
                .forEach(days -> byLength.merge(days.days(), 1, Integer::sum));
        List<JobKind> kinds = new ArrayList<>();
        byLength.forEach((days, count) ->
                kinds.add(new JobKind(days == 1 ? "1 day" : days + " days", BigDecimal.valueOf(count), days, 0, WEEK)));
        return kinds;
    }
}
