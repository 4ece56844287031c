package dayglass.web.page.job;

import dayglass.base.Outcome;
import dayglass.cost.plan.StopSignal;
import dayglass.job.Job;
import dayglass.planning.Priced;
import dayglass.web.page.PageSources;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;

/** The costings that are being worked out, each on a thread of its own, until their answer has been fetched. */
final class Runs {
    private static final int MOST_AT_ONCE = 4;
    private static final Duration KEPT_FOR = Duration.ofMinutes(30);

    private final Map<Long, Run> runs = new ConcurrentHashMap<>();
    private final AtomicLong last = new AtomicLong();
    private final PageSources.JobCosting costing;
    private final Clock clock;

    Runs(PageSources.JobCosting costing, Clock clock) {
        this.costing = costing;
        this.clock = clock;
    }

    /** One costing under way or ended. */
    static final class Run {
        private final long number;
        private final Job.Id job;
        private final Instant startedAt;
        private final AtomicBoolean stopped = new AtomicBoolean();
        private final CountDownLatch ended = new CountDownLatch(1);
        private final AtomicReference<Optional<Outcome<Priced>>> outcome = new AtomicReference<>(Optional.empty());

        private Run(long number, Job.Id job, Instant startedAt) {
            this.number = number;
            this.job = job;
            this.startedAt = startedAt;
        }

        long number() {
            return number;
        }

        Job.Id job() {
            return job;
        }

        long elapsedSeconds(Instant now) {
            return Duration.between(startedAt, now).toSeconds();
        }

        /** Asks for the best that was found so far. */
        void stop() {
            stopped.set(true);
        }

        boolean over() {
            return ended.getCount() == 0;
        }

        /** What came of it; empty while it runs, and where the program failed at it. */
        Optional<Outcome<Priced>> outcome() {
            return Objects.requireNonNull(outcome.get());
        }

        boolean endsWithin(Duration time) {
            try {
                return ended.await(time.toMillis(), TimeUnit.MILLISECONDS);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                return false;
            }
        }

        private void work(PageSources.JobCosting costing) {
            StopSignal signal = stopped::get;
            try {
                outcome.set(Optional.of(costing.cost(job, signal)));
            } finally {
                ended.countDown();
            }
        }
    }

    /** Starts a costing, or nothing where as many as may run at once are running. */
    Optional<Run> start(Job.Id job) {
        Instant now = clock.instant();
        runs.values().removeIf(run -> run.over() && run.startedAt.plus(KEPT_FOR).isBefore(now));
        if (runs.values().stream().filter(run -> !run.over()).count() >= MOST_AT_ONCE) {
            return Optional.empty();
        }
        Run run = new Run(last.incrementAndGet(), job, now);
        runs.put(run.number, run);
        Thread thread = new Thread(() -> run.work(costing), "costing " + run.number);
        thread.setDaemon(true);
        thread.start();
        return Optional.of(run);
    }

    Optional<Run> find(long number) {
        return Optional.ofNullable(runs.get(number));
    }
}
