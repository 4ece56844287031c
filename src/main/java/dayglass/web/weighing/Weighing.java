package dayglass.web.weighing;

import dayglass.cost.scenario.Verdict;
import dayglass.cost.scenario.VerdictQuestion;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/** One verdict under way or over. */
public final class Weighing {
    private final long number;
    private final VerdictQuestion question;
    private final Instant startedAt;
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final CountDownLatch ended = new CountDownLatch(1);
    private final AtomicReference<Optional<Verdict>> verdict = new AtomicReference<>(Optional.empty());

    Weighing(long number, VerdictQuestion question, Instant startedAt) {
        this.number = number;
        this.question = question;
        this.startedAt = startedAt;
    }

    void start() {
        Thread thread = new Thread(this::work, "verdict " + number);
        thread.setDaemon(true);
        thread.start();
    }

    private void work() {
        try {
            verdict.set(
                    Optional.of(Verdict.of(question, stopped::get, count -> done.accumulateAndGet(count, Math::max))));
        } finally {
            ended.countDown();
        }
    }

    public long number() {
        return number;
    }

    public Instant startedAt() {
        return startedAt;
    }

    /** How many draws are asked for; 0 where nothing is drawn. */
    public int draws() {
        return question.uncertainty().map(unsure -> unsure.sample().draws()).orElse(0);
    }

    public int drawsDone() {
        return done.get();
    }

    /** Asks for what is known so far. */
    public void stop() {
        stopped.set(true);
    }

    /** Whether it was told to stop; it may have been over already. */
    public boolean stopped() {
        return stopped.get();
    }

    public boolean over() {
        return ended.getCount() == 0;
    }

    /** Empty while it is under way, and where the program failed at it. */
    public Optional<Verdict> verdict() {
        return Objects.requireNonNull(verdict.get());
    }

    /** Waits so long at most, and says whether it is over. */
    public boolean endsWithin(Duration time) {
        try {
            return ended.await(time.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
