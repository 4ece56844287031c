package dayglass.web.page.wall;

import dayglass.inventory.booking.Hold;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Stay;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Rows of bars: a unit a row, in the order and groups that its maker gives.
 *
 * @param days the columns
 * @param now where the present moment stands, -1 where it is not on the wall
 */
public record WallPicture(WallDays days, List<Group> groups, int now) {
    private static final double CHARACTER_WIDTH = 6.6;
    private static final int LEAST_WIDTH = 3;
    private static final String TURNAROUND = "turnaround";
    private static final String HOLD = "hold";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.UK);

    public WallPicture {
        groups = List.copyOf(groups);
    }

    /** Units of one set, or those of none. */
    public record Group(String name, List<Row> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /** A unit with what is known of it. */
    public record Row(long unit, String tag, String model, List<Bar> bars) {
        public Row {
            bars = List.copyOf(bars);
        }
    }

    /**
     * A time that a unit is not free, or wished for.
     *
     * @param kind {@code booking}, {@code out}, {@code late}, {@code bench}, {@code absence}, {@code turnaround} or
     *     {@code hold}
     * @param place where in its row it lies
     * @param caption as much of what it is for as fits
     * @param address the page of what it shows
     */
    public record Bar(int x, int width, String kind, Place place, String caption, String title, String address) {
        Bar leadingTo(String page) {
            return new Bar(x, width, kind, place, caption, title, page);
        }
    }

    /**
     * Where a bar lies in its row, from the top.
     *
     * @param textY where the caption's line is
     */
    public record Place(int y, int height, int textY) {
        private static final Place WHOLE = new Place(3, 20, 17);
        private static final Place THIN = new Place(10, 6, 17);
        private static final Place UPPER = new Place(2, 11, 11);
        private static final Place LOWER = new Place(14, 11, 23);

        /** In a key, where one bar of each kind stands by itself. */
        public static Place inKey(String kind) {
            return kind.equals(TURNAROUND) ? THIN : kind.equals(HOLD) ? UPPER : WHOLE;
        }
    }

    public int rows() {
        return groups.stream().mapToInt(group -> group.rows().size()).sum();
    }

    /** The bars of one occupation: itself, what it runs over its time, and the turnaround after it. */
    static List<Bar> bars(Occupation of, WallDays days, Instant now, ZoneId zone) {
        Stay stay = of.stay();
        boolean out = of.handling().isOut();
        boolean late = out && stay.back().isBefore(now);
        String words = words(of, out, late) + ": " + of.subject() + ", " + span(stay.out(), stay.back(), zone);
        List<Bar> bars = new ArrayList<>();
        String kind =
                out && of.kind() == Occupation.Kind.BOOKING ? "out" : of.kind().word();
        add(bars, days, new Time(stay.out(), stay.back()), new Look(kind, Place.WHOLE), of.subject(), words);
        if (late) {
            add(bars, days, new Time(stay.back(), now), new Look("late", Place.WHOLE), "late", words);
        } else if (stay.freeAt().isAfter(stay.back())) {
            add(
                    bars,
                    days,
                    new Time(stay.back(), stay.freeAt()),
                    new Look(TURNAROUND, Place.THIN),
                    "",
                    "turnaround until " + MOMENT.format(stay.freeAt().atZone(zone)));
        }
        return bars;
    }

    static List<Bar> bars(Hold hold, WallDays days, ZoneId zone) {
        List<Bar> bars = new ArrayList<>();
        add(
                bars,
                days,
                new Time(hold.out(), hold.back()),
                new Look(HOLD, hold.rank() == 1 ? Place.UPPER : Place.LOWER),
                hold.subject(),
                "hold " + hold.rank() + ": " + hold.subject() + ", " + span(hold.out(), hold.back(), zone));
        return bars;
    }

    private record Time(Instant from, Instant until) {}

    private record Look(String kind, Place place) {}

    private static void add(List<Bar> bars, WallDays days, Time time, Look look, String caption, String title) {
        int from = days.x(time.from());
        int until = days.x(time.until());
        boolean seen = time.until().isAfter(days.begin()) && time.from().isBefore(days.end());
        if (seen) {
            int width = Math.max(LEAST_WIDTH, until - from);
            int fits = (int) ((width - 8) / CHARACTER_WIDTH);
            String short_ = caption.length() <= fits ? caption : fits < 3 ? "" : caption.substring(0, fits - 1) + "…";
            bars.add(new Bar(from, width, look.kind(), look.place(), short_, title, ""));
        }
    }

    private static String words(Occupation of, boolean out, boolean late) {
        return switch (of.kind()) {
            case BOOKING -> late ? "late, was due back" : out ? "out" : "booked";
            case BENCH -> "on the bench";
            case ABSENCE -> "away";
        };
    }

    private static String span(Instant from, Instant until, ZoneId zone) {
        return MOMENT.format(from.atZone(zone)) + " to " + MOMENT.format(until.atZone(zone));
    }
}
