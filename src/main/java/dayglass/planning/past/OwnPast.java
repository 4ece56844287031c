package dayglass.planning.past;

import dayglass.base.Stored;
import dayglass.cost.ownership.OwnSales;
import dayglass.house.HouseSettings;
import dayglass.inventory.worth.MyGlass;
import dayglass.job.Job;
import dayglass.job.Jobs;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Reads what the house's own past says. */
public final class OwnPast {
    private static final int ALL = Integer.MAX_VALUE;

    private final Jobs jobs;
    private final MyGlass glass;
    private final HouseSettings settings;
    private final Clock clock;

    public OwnPast(Jobs jobs, MyGlass glass, HouseSettings settings, Clock clock) {
        this.jobs = jobs;
        this.glass = glass;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * The past, up to a day.
     *
     * @param jobs that are over, by their first day
     * @param sales of own units, in any currency
     */
    public record Past(LocalDate until, List<PastJob> jobs, List<OwnSales.Sale> sales) {
        public Past {
            jobs = List.copyOf(jobs);
            sales = List.copyOf(sales);
        }

        /** Days of use of each job. */
        public List<Integer> lengths() {
            return jobs.stream().map(PastJob::days).toList();
        }

        /**
         * How many jobs began in each calendar year from the first job's to the last that is over, empty years too; of the
         * running year alone where there is no other.
         */
        public List<Integer> perYear() {
            if (jobs.isEmpty()) {
                return List.of();
            }
            int first = jobs.get(0).dates().from().getYear();
            int last = Math.max(first, until.getYear() - 1);
            TreeMap<Integer, Integer> counts = new TreeMap<>();
            for (int year = first; year <= last; year++) {
                counts.put(year, 0);
            }
            jobs.forEach(job -> counts.computeIfPresent(job.dates().from().getYear(), (year, count) -> count + 1));
            return List.copyOf(counts.values());
        }
    }

    /** Up to today. */
    public Past read() {
        LocalDate today = clock.instant().atZone(settings.now().facts().zone()).toLocalDate();
        List<PastJob> over = new ArrayList<>();
        for (Stored<Job.Id, Job> job : jobs.list(Optional.empty(), ALL)) {
            PastJob.of(job, today).ifPresent(over::add);
        }
        over.sort(Comparator.comparing(job -> job.dates().from()));
        return new Past(today, over, glass.sold());
    }
}
