package dayglass.planning.ways;

import dayglass.job.Job;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** An options sheet under way or ended; its rows can be read as they are done. */
public final class OptionsSheet {
    private final long number;
    private final Job.Id job;
    private final int ways;
    private final Instant startedAt;
    private final Map<Integer, SheetRow> rows = new TreeMap<>();
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
            return List.copyOf(rows.values());
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

    /** The row of a way, anew or for the first time; the ways are numbered from 0. */
    void put(int way, SheetRow row) {
        synchronized (rows) {
            rows.put(way, row);
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
