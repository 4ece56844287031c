package dayglass.web.page.booking;

import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.web.page.picture.Words;
import java.time.Instant;
import java.time.ZoneId;

/** Bookings, bench visits and absences in words, at one moment. */
record Wording(Instant now, ZoneId zone) {

    /** What it is: {@code bench visit}. */
    static String kind(Kind kind) {
        return kind == Kind.BENCH ? "bench visit" : kind.word();
    }

    String moment(Instant at) {
        return Words.moment(at, zone);
    }

    /** How it stands. */
    String state(Occupation of) {
        if (of.cancelled()) {
            return "cancelled";
        }
        return switch (of.kind()) {
            case BOOKING -> booking(of);
            case BENCH -> bench(of);
            case ABSENCE -> isAhead(of) ? "planned" : isOver(of) ? "over" : "away";
        };
    }

    private String booking(Occupation of) {
        if (of.handling().cameBack().isPresent()) {
            return "back since " + moment(of.handling().cameBack().get());
        }
        if (of.handling().isOut()) {
            return isOver(of)
                    ? "late, was due back " + moment(of.stay().back())
                    : "out, due back " + moment(of.stay().back());
        }
        if (isOver(of)) {
            return "its time is over, and it never went out";
        }
        return isAhead(of)
                ? "booked"
                : "to be handed over since " + moment(of.stay().out());
    }

    private String bench(Occupation of) {
        if (of.bench().filter(BenchWork::done).isPresent()) {
            return "done";
        }
        return isAhead(of) ? "planned" : isOver(of) ? "its time is over: say what was done" : "on the bench";
    }

    private boolean isAhead(Occupation of) {
        return of.stay().out().isAfter(now);
    }

    private boolean isOver(Occupation of) {
        return !of.stay().back().isAfter(now);
    }
}
