package dayglass.support;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until a test moves it. */
public final class TestClock extends Clock {
    private volatile Instant now;

    public TestClock(String now) {
        this.now = Instant.parse(now);
    }

    public void set(String moment) {
        now = Instant.parse(moment);
    }

    public void pass(Duration time) {
        now = now.plus(time);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        return now;
    }
}
