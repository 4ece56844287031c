package dayglass.planning.ways;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * From how many shoot days on renting costs as much as buying.
 *
 * @param shootDays the least number; empty where there is none to tell
 * @param why there is none; empty text where there is
 */
public record Payback(Optional<Integer> shootDays, String why) {
    private static final int WEEK = 7;

    private static Payback none(String why) {
        return new Payback(Optional.empty(), why);
    }

    /**
     * Works it out with the engine. The job's pattern is repeated, each time on the same weekdays; what is needed up to a
     * shoot day counts, over a horizon that stays the same, so that more days never cost less. Cash does not matter, as
     * the question is what buying is worth.
     *
     * @param question what the way's own options serve, without what completes them
     */
    static Payback of(Question question, StopSignal stop) {
        if (question.purchases().isEmpty()) {
            return none("nothing of it is for sale");
        }
        if (question.rentals().isEmpty()) {
            return none("nothing of it can be rented");
        }
        Optional<LeastCost.Best> buying = LeastCost.best(OwnPart.bought(question), stop);
        if (buying.isEmpty()) {
            return none("buying alone does not serve all that it serves");
        }
        if (!buying.get().lowerBound().equals(buying.get().total())) {
            return none("buying alone was not settled in the time");
        }
        return new Search(question, buying.get().total(), stop).found();
    }

    /** One search. */
    private static final class Search {
        private final Question question;
        private final Money buying;
        private final StopSignal stop;
        private final int stride;
        private final int mostRepeats;
        private final List<LocalDate> shoot;
        private final Map<String, Map<LocalDate, Integer>> demand;

        Search(Question question, Money buying, StopSignal stop) {
            this.question = question;
            this.buying = buying;
            this.stop = stop;
            int days = question.schedule().days();
            this.stride = (days + WEEK - 1) / WEEK * WEEK;
            this.mostRepeats = (Schedule.MOST_DAYS - days) / stride + 1;
            this.demand = WayQuestion.demand(question);
            this.shoot = question.schedule().horizon().stream()
                    .filter(day -> question.schedule()
                            .useOn(question.schedule().dayOf(day))
                            .equals(DayUse.SHOOT))
                    .toList();
        }

        Payback found() {
            if (shoot.isEmpty()) {
                return none("the job has no shoot day");
            }
            int repeats = 1;
            Reached reached = reaches(repeats, repeats * shoot.size());
            while (reached == Reached.NO && repeats < mostRepeats) {
                repeats = Math.min(mostRepeats, repeats * 2);
                reached = reaches(repeats, repeats * shoot.size());
            }
            if (reached == Reached.NO) {
                return none("not within " + repeats * shoot.size() + " shoot days");
            }
            if (reached == Reached.NEVER) {
                return none("renting alone does not serve all that it serves");
            }
            int low = 0;
            int high = repeats * shoot.size();
            while (reached == Reached.YES && high - low > 1) {
                int middle = (low + high) / 2;
                Reached there = reaches(repeats, middle);
                low = there == Reached.NO ? middle : low;
                high = there == Reached.YES ? middle : high;
                reached = there == Reached.UNSETTLED ? there : reached;
            }
            return reached == Reached.UNSETTLED ? none("not settled in the time") : new Payback(Optional.of(high), "");
        }

        private enum Reached {
            YES,
            NO,
            UNSETTLED,
            NEVER
        }

        /** Whether renting for so many shoot days costs as much as buying. */
        private Reached reaches(int repeats, int shootDays) {
            Question asked = renting(repeats, shootDays);
            if (asked.needs().isEmpty()) {
                return buying.signum() <= 0 ? Reached.YES : Reached.NO;
            }
            Optional<LeastCost.Best> renting = LeastCost.best(asked, stop);
            if (renting.isEmpty()) {
                return stop.stopped() ? Reached.UNSETTLED : Reached.NEVER;
            }
            if (renting.get().lowerBound().compareTo(buying) >= 0) {
                return Reached.YES;
            }
            return renting.get().total().compareTo(buying) < 0 ? Reached.NO : Reached.UNSETTLED;
        }

        private Question renting(int repeats, int shootDays) {
            LocalDate last = day(shoot.get((shootDays - 1) % shoot.size()), (shootDays - 1) / shoot.size());
            List<Question.Need> needs = new ArrayList<>();
            demand.forEach((slot, days) -> days.forEach((date, count) -> {
                List<DateRange> dates = new ArrayList<>();
                for (int repeat = 0; repeat < repeats; repeat++) {
                    LocalDate on = day(date, repeat);
                    if (!on.isAfter(last)) {
                        dates.add(DateRange.inclusive(on, on));
                    }
                }
                if (count > 0 && !dates.isEmpty()) {
                    needs.add(new Question.Need(slot, count, Set.of(), dates));
                }
            }));
            return new Question(
                    question.job(),
                    question.currency(),
                    question.discountRate(),
                    Optional.empty(),
                    schedule(repeats),
                    needs,
                    question.rentals().stream()
                            .filter(option -> isThere(option.available()))
                            .map(option -> new Question.Rental(
                                    option.id(),
                                    option.supplier(),
                                    option.covers(),
                                    option.copies(),
                                    option.terms(),
                                    windows(option.available(), repeats),
                                    option.draws()))
                            .toList(),
                    List.of(),
                    question.owned().stream()
                            .filter(option -> isThere(option.available()))
                            .map(option -> new Question.Owned(
                                    option.id(), option.covers(), windows(option.available(), repeats)))
                            .toList(),
                    question.stock());
        }

        private LocalDate day(LocalDate date, int repeat) {
            return date.plusDays((long) repeat * stride);
        }

        private Schedule schedule(int repeats) {
            List<Schedule.Span> spans = new ArrayList<>();
            for (int repeat = 0; repeat < repeats; repeat++) {
                for (Schedule.Span span : question.schedule().spans()) {
                    spans.add(new Schedule.Span(moved(span.dates(), repeat), span.use()));
                }
            }
            return new Schedule(spans);
        }

        private DateRange moved(DateRange dates, int repeat) {
            return new DateRange(day(dates.from(), repeat), day(dates.until(), repeat));
        }

        /** No window means always, so that what has none inside the job must be left out. */
        private boolean isThere(List<DateRange> windows) {
            return windows.isEmpty()
                    || windows.stream()
                            .anyMatch(window ->
                                    window.overlaps(question.schedule().horizon()));
        }

        /** What is there for the whole job is there for ever; other windows come again with the pattern. */
        private List<DateRange> windows(List<DateRange> windows, int repeats) {
            DateRange horizon = question.schedule().horizon();
            boolean whole = windows.stream()
                    .anyMatch(window -> !window.from().isAfter(horizon.from())
                            && !window.until().isBefore(horizon.until()));
            if (windows.isEmpty() || whole) {
                return List.of();
            }
            List<DateRange> all = new ArrayList<>();
            for (int repeat = 0; repeat < repeats; repeat++) {
                for (DateRange window : windows) {
                    Optional<DateRange> inside = window.within(horizon);
                    if (inside.isPresent()) {
                        all.add(moved(inside.get(), repeat));
                    }
                }
            }
            return all;
        }
    }
}
