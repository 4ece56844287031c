package dayglass.desk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.DateRange;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class SayDatesTest {
    private static final List<DayUse> USES = List.of(DayUse.PREP, DayUse.SHOOT, DayUse.TRAVEL, DayUse.WRAP);

    /** Whatever today is; at most five spans, as a package says them in at most 300 characters. */
    @Property(tries = 300)
    void whatIsSaidIsReadAsTheSameDays(
            @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 0, max = 399) Integer> spans,
            @ForAll @IntRange(min = -400, max = 400) int today) {
        List<Schedule.Span> made = new ArrayList<>();
        LocalDate day = LocalDate.of(2027, 12, 20);
        for (int span : spans) {
            LocalDate from = day.plusDays(span / 100);
            LocalDate until = from.plusDays(1 + span % 10);
            made.add(new Schedule.Span(new DateRange(from, until), USES.get(span / 10 % USES.size())));
            day = until;
        }
        Schedule schedule = new Schedule(made);
        Schedule read = DateWords.read(
                        DateWords.say(schedule), LocalDate.of(2027, 12, 20).plusDays(today))
                .fold(days -> days, problem -> {
                    throw new AssertionError(problem);
                });
        assertEquals(schedule.spans(), read.spans());
    }
}
