package dayglass.planning.ways;

import dayglass.job.Job;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** An options sheet under way or ended; its rows can be read as they are done. */
public final class OptionsSheet {
    private final long number;
    private final Job.Id job;
    private final int ways;
    private final Instant startedAt;
    private final List<SheetRow> rows = new ArrayList<>();
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean stopped;
    private volatile boolean failed;

    OptionsSheet(long number, Job.Id job, int ways, Instant startedAt) {
        this.number = number;
        this.job = job;
        this.ways = ways;
        this.startedAt = startedAt;
    }

    public long number() {
        return number;
    }

    public Job.Id job() {
        return job;
    }

    /** How many rows it will have. */
    public int ways() {
        return ways;
    }

    public Instant startedAt() {
        return startedAt;
    }

    /** Those done so far, in the order of the ways. */
    public List<SheetRow> rows() {
        synchronized (rows) {
            return List.copyOf(rows);
        }
    }

    public boolean over() {
        return ended.getCount() == 0;
    }

    /** The program failed at it; its log says why. */
    public boolean failed() {
        return failed;
    }

    /** Asks for no more than what was found so far. */
    public void stop() {
        stopped = true;
    }

    public boolean stopped() {
        return stopped;
    }

    public boolean endsWithin(Duration time) {
        try {
            return ended.await(time.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    void add(SheetRow row) {
        synchronized (rows) {
            rows.add(row);
        }
    }

    void replace(SheetRow row) {
        synchronized (rows) {
            rows.replaceAll(each -> each.way().equals(row.way()) ? row : each);
        }
    }

    void work(Runnable work) {
        boolean done = false;
        try {
            work.run();
            done = true;
        } finally {
            failed = !done;
            ended.countDown();
        }
    }
}
