package dayglass.web.weighing;

import dayglass.cost.scenario.VerdictQuestion;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/** The verdicts under way, each on a thread of its own, kept a while when they are over. */
public final class Weighings {
    private static final int MOST_AT_ONCE = 4;
    private static final int MOST_KEPT = 50;
    private static final Duration KEPT_FOR = Duration.ofMinutes(30);

    private final Map<Long, Weighing> all = new ConcurrentHashMap<>();
    private final AtomicLong last = new AtomicLong();
    private final Clock clock;

    public Weighings(Clock clock) {
        this.clock = clock;
    }

    /** Starts one, or nothing where as many as may run at once are running. */
    public synchronized Optional<Weighing> start(VerdictQuestion question) {
        Instant now = clock.instant();
        all.values()
                .removeIf(each -> each.over() && each.startedAt().plus(KEPT_FOR).isBefore(now));
        all.values().removeIf(each -> each.over() && each.number() <= last.get() - MOST_KEPT);
        if (all.values().stream().filter(each -> !each.over()).count() >= MOST_AT_ONCE) {
            return Optional.empty();
        }
        Weighing started = new Weighing(last.incrementAndGet(), question, now);
        all.put(started.number(), started);
        started.start();
        return Optional.of(started);
    }

    public Optional<Weighing> find(long number) {
        return Optional.ofNullable(all.get(number));
    }

    public long elapsedSeconds(Weighing weighing) {
        return Duration.between(weighing.startedAt(), clock.instant()).toSeconds();
    }
}
