package dayglass.books.report;

import dayglass.base.Money;
import dayglass.house.Person;
import dayglass.job.Job;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a person says is still to come of a cost code, beyond what is committed.
 *
 * @param date from which it counts
 * @param sum empty where what was said before is taken back, so that it is worked out again
 */
public record ToComplete(Job.Id job, LocalDate date, Place place, Optional<Sum> sum, String note) {
    private static final Comparator<Kept> BY_DAY = Comparator.comparing(
                    (Kept kept) -> kept.figure().date())
            .thenComparing(kept -> kept.id().number());

    /** The number of a typed figure. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * Where it belongs.
     *
     * @param costCode empty where the job has no chart
     * @param episode empty where it is of none in particular
     */
    public record Place(String costCode, String episode) implements Comparable<Place> {
        private static final Comparator<Place> ORDER =
                Comparator.comparing(Place::costCode).thenComparing(Place::episode);

        @Override
        public int compareTo(Place other) {
            return ORDER.compare(this, other);
        }
    }

    /** In the job's currency. */
    public record Sum(Money net, Money tax) {}

    /** A figure that is kept, with who typed it and when. */
    public record Kept(Id id, ToComplete figure, Person.Id by, Instant at) {}

    /** Those that count at the end of a day, by code and episode: of each the last, unless it takes back. */
    public static List<Kept> inForce(List<Kept> all, Optional<LocalDate> until) {
        Map<Place, Kept> last = new TreeMap<>();
        all.stream()
                .filter(kept ->
                        until.filter(day -> kept.figure().date().isAfter(day)).isEmpty())
                .sorted(BY_DAY)
                .forEach(kept -> last.put(kept.figure().place(), kept));
        return last.values().stream()
                .filter(kept -> kept.figure().sum().isPresent())
                .toList();
    }
}
