package dayglass.planning.ways;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.OwnMounts;
import dayglass.job.Brief;
import dayglass.job.Briefs;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.job.Way;
import dayglass.job.Ways;
import dayglass.optics.Mounts;
import dayglass.planning.Costings;
import dayglass.planning.glass.Judging;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** The options sheets that are being worked out or were lately, each on a thread of its own. */
public final class OptionsSheets {
    private static final int MOST_AT_ONCE = 2;
    private static final int MOST_KEPT = 50;
    private static final Duration KEPT_FOR = Duration.ofHours(12);

    private final Asked asked;
    private final CostWay costWay;
    private final Clock clock;
    private final Map<Long, OptionsSheet> sheets = new ConcurrentHashMap<>();
    private final AtomicLong last;

    public OptionsSheets(Asked asked, CostWay costWay, Clock clock) {
        this.asked = asked;
        this.costWay = costWay;
        this.clock = clock;
        // So that a number is never that of another sheet after the program was started again.
        this.last = new AtomicLong(clock.millis());
    }

    /** What a sheet is made of. */
    public record Asked(Jobs jobs, Briefs briefs, Ways ways, OwnMounts mounts, Costings costings) {}

    /** Starts the sheet of a job; refused where its brief or its ways are missing. */
    public Outcome<OptionsSheet> start(Job.Id id) {
        Optional<Job> job = asked.jobs().find(id).map(Stored::facts);
        if (job.isEmpty()) {
            return Outcome.refused(Problem.Code.NOT_FOUND, "There is no job with the id " + id.number() + ".");
        }
        Optional<Brief> brief = asked.briefs().of(id).map(Stored::facts);
        if (brief.isEmpty()) {
            return refused("The job has no brief: say first which camera, delivery and looks it is to be judged by.");
        }
        List<Stored<Way.Id, Way>> ways = asked.ways().of(id);
        if (ways.isEmpty()) {
            return refused("The job has no ways to compare: add one first.");
        }
        Mounts mounts = asked.mounts().all();
        String mount = brief.get().picture().camera().mount();
        if (mounts.flangeMm(mount).isEmpty()) {
            return refused("The brief's camera has the mount " + mount + ", which is not known any more.");
        }
        return run(new OptionsSheet(last.incrementAndGet(), id, ways.size(), clock.instant()), sheet -> {
            SheetBasis basis = costWay.basis(job.get(), new Judging(brief.get(), mounts), ways);
            eachOf(sheet, ways.size(), way -> sheet.put(way, costWay.row(ways.get(way), basis, sheet::stopped)));
            List<SheetRow> rows = sheet.rows();
            eachOf(sheet, rows.size(), way -> payBack(sheet, way, rows.get(way)));
        });
    }

    private void payBack(OptionsSheet sheet, int way, SheetRow row) {
        row.cost()
                .flatMap(cost ->
                        asked.costings().find(cost.costing()).map(kept -> costWay.payback(kept, sheet::stopped)))
                .ifPresent(payback -> sheet.put(way, row.with(payback)));
    }

    /** Takes them in their order, as many at once as the machine has processors, until the sheet is stopped. */
    private static void eachOf(OptionsSheet sheet, int count, IntConsumer work) {
        AtomicInteger next = new AtomicInteger();
        IntStream.range(0, Runtime.getRuntime().availableProcessors())
                .parallel()
                .forEach(worker -> {
                    for (int each = next.getAndIncrement();
                            each < count && !sheet.stopped();
                            each = next.getAndIncrement()) {
                        work.accept(each);
                    }
                });
    }

    private static <T> Outcome<T> refused(String detail) {
        return Outcome.refused(Problem.Code.CANNOT_BE_DONE, detail);
    }

    private synchronized Outcome<OptionsSheet> run(OptionsSheet sheet, java.util.function.Consumer<OptionsSheet> work) {
        Instant now = clock.instant();
        sheets.values()
                .removeIf(each -> each.over()
                        && (each.startedAt().plus(KEPT_FOR).isBefore(now)
                                || each.number() <= sheet.number() - MOST_KEPT));
        if (sheets.values().stream().filter(each -> !each.over()).count() >= MOST_AT_ONCE) {
            return Outcome.refused(
                    Problem.Code.BUSY, "Other options sheets are being worked out; try again in a while.");
        }
        sheets.put(sheet.number(), sheet);
        Thread thread = new Thread(() -> sheet.work(() -> work.accept(sheet)), "options sheet " + sheet.number());
        thread.setDaemon(true);
        thread.start();
        return Outcome.done(sheet);
    }

    public Optional<OptionsSheet> find(long number) {
        return Optional.ofNullable(sheets.get(number));
    }

    /** The sheet of a job that was started last. */
    public Optional<OptionsSheet> latestOf(Job.Id job) {
        return sheets.values().stream()
                .filter(sheet -> sheet.job().equals(job))
                .max(java.util.Comparator.comparing(OptionsSheet::number));
    }
}
