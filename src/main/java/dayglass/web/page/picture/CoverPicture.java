package dayglass.web.page.picture;

import dayglass.base.DateRange;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Question;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What serves each slot by day: a row a slot, days across, a bar for each thing held that covers the slot, cut at the
 * boundaries of its blocks, with a rule under it on the days it serves.
 */
public record CoverPicture(Axis axis, List<Row> rows) {
    static final int LANE_HEIGHT = 44;
    static final int BAR_HEIGHT = 32;
    private static final int ROW_MARGIN = 6;
    private static final int PAPER_DAYS = 28;
    private static final int PAPER_DAY_WIDTH = 20;
    private static final double CHARACTER_WIDTH = 6.3;
    private static final int TEXT_MARGIN = 7;

    public CoverPicture {
        rows = List.copyOf(rows);
    }

    /**
     * A slot's row.
     *
     * @param asked how many are asked for and when, in words
     * @param needed runs of days on which it is asked for
     */
    public record Row(String slot, String asked, int height, List<Run> needed, List<Bar> bars) {
        public Row {
            needed = List.copyOf(needed);
            bars = List.copyOf(bars);
        }
    }

    public record Run(int x, int width) {}

    /**
     * Something held that covers the slot.
     *
     * @param kind {@code rented}, {@code bought} or {@code owned}
     * @param caption what fits on it of its name
     * @param pieces a rental's blocks, or the whole bar
     * @param serving runs of days on which it serves this slot
     */
    public record Bar(
            int x, int y, int width, String kind, String caption, String title, List<Piece> pieces, List<Run> serving) {
        public Bar {
            pieces = List.copyOf(pieces);
            serving = List.copyOf(serving);
        }
    }

    /** A block's part of a bar. */
    public record Piece(int x, int width, String caption, String title) {}

    /** The whole horizon in one strip. */
    public static CoverPicture of(Question question, Answer answer) {
        return of(
                question,
                answer,
                Axis.of(question.schedule(), question.schedule().horizon()));
    }

    /** The same in strips of four weeks, for paper. */
    public static List<CoverPicture> forPaper(Question question, Answer answer) {
        List<CoverPicture> strips = new ArrayList<>();
        DateRange horizon = question.schedule().horizon();
        for (LocalDate from = horizon.from(); from.isBefore(horizon.until()); from = from.plusDays(PAPER_DAYS)) {
            LocalDate until = from.plusDays(PAPER_DAYS);
            DateRange dates = new DateRange(from, until.isAfter(horizon.until()) ? horizon.until() : until);
            strips.add(of(question, answer, Axis.of(question.schedule(), dates, PAPER_DAY_WIDTH)));
        }
        return strips;
    }

    private static CoverPicture of(Question question, Answer answer, Axis axis) {
        List<Holding> held = Holding.of(question, answer.choices());
        Map<String, Map<String, Integer>> covers = Holding.covers(question);
        List<String> slots =
                question.needs().stream().map(Question.Need::slot).distinct().toList();
        List<Row> rows = new ArrayList<>();
        for (String slot : slots) {
            List<Holding> ofSlot = held.stream()
                    .filter(each -> covers.getOrDefault(each.option(), Map.of()).containsKey(slot))
                    .filter(each -> each.dates().overlaps(axis.dates()))
                    .sorted(Comparator.comparing(each -> each.dates().from()))
                    .toList();
            rows.add(row(question, answer, axis, slot, ofSlot));
        }
        return new CoverPicture(axis, rows);
    }

    private static Row row(Question question, Answer answer, Axis axis, String slot, List<Holding> held) {
        Map<LocalDate, Map<String, Long>> serving = new HashMap<>();
        answer.coverage().stream()
                .filter(each -> each.slot().equals(slot))
                .forEach(each -> serving.put(
                        each.date(),
                        each.by().stream().collect(Collectors.groupingBy(by -> by, Collectors.counting()))));
        List<LocalDate> laneEnds = new ArrayList<>();
        List<Bar> bars = new ArrayList<>();
        for (Holding each : held) {
            int lane = lane(laneEnds, each.dates());
            bars.add(bar(axis, each, ROW_MARGIN + lane * LANE_HEIGHT, serving));
        }
        String asked = question.needs().stream()
                .filter(need -> need.slot().equals(slot))
                .map(need -> need.count() + " on " + Words.when(need))
                .collect(Collectors.joining("; "));
        int height = Math.max(1, laneEnds.size()) * LANE_HEIGHT + 2 * ROW_MARGIN;
        return new Row(slot, asked, height, runs(axis, axis.dates(), serving::containsKey), bars);
    }

    private static int lane(List<LocalDate> laneEnds, DateRange dates) {
        for (int lane = 0; lane < laneEnds.size(); lane++) {
            if (!laneEnds.get(lane).isAfter(dates.from())) {
                laneEnds.set(lane, dates.until());
                return lane;
            }
        }
        laneEnds.add(dates.until());
        return laneEnds.size() - 1;
    }

    private static Bar bar(Axis axis, Holding held, int y, Map<LocalDate, Map<String, Long>> serving) {
        DateRange seen = held.dates().within(axis.dates()).orElseThrow();
        int x = axis.xOf(seen.from());
        int width = axis.xOf(seen.until()) - x;
        List<Piece> pieces = new ArrayList<>();
        for (Holding.Block block : held.blocks()) {
            piece(axis, seen, block).ifPresent(pieces::add);
        }
        if (pieces.isEmpty()) {
            pieces.add(new Piece(x, width, "", held.kind()));
        }
        // Of several copies held on one day the answer says only how many serve; the first ones are then taken to.
        List<Run> runs =
                runs(axis, seen, date -> serving.getOrDefault(date, Map.of()).containsKey(held.option()));
        String title = held.option() + ", " + held.kind() + ", " + held.from() + ", " + Words.dates(held.dates());
        return new Bar(x, y, width, held.kind(), fit(held.option(), width), title, pieces, runs);
    }

    private static Optional<Piece> piece(Axis axis, DateRange seen, Holding.Block block) {
        return block.dates().within(seen).map(dates -> {
            int x = axis.xOf(dates.from());
            int width = axis.xOf(dates.until()) - x;
            String whole = block.name() + " " + block.price();
            String caption = fit(whole, width);
            return new Piece(
                    x,
                    width,
                    caption.endsWith("…") || caption.isEmpty() ? whole(block.price(), width) : caption,
                    whole + ", charged " + Words.dates(block.dates()));
        });
    }

    private static List<Run> runs(Axis axis, DateRange dates, java.util.function.Predicate<LocalDate> in) {
        List<Run> runs = new ArrayList<>();
        LocalDate start = dates.until();
        for (LocalDate date = dates.from(); !date.isAfter(dates.until()); date = date.plusDays(1)) {
            boolean inside = date.isBefore(dates.until()) && in.test(date);
            if (inside && start.equals(dates.until())) {
                start = date;
            } else if (!inside && start.isBefore(date)) {
                runs.add(new Run(axis.xOf(start), axis.xOf(date) - axis.xOf(start)));
                start = dates.until();
            }
        }
        return runs;
    }

    /** A text, or nothing where it does not fit whole. */
    private static String whole(String text, int width) {
        return fit(text, width).equals(text) ? text : "";
    }

    /** As much of a text as fits into a width; nothing where fewer than three characters would. */
    private static String fit(String text, int width) {
        int room = (int) ((width - TEXT_MARGIN) / CHARACTER_WIDTH);
        int[] points = text.codePoints().toArray();
        if (points.length <= room) {
            return text;
        }
        return room < 4 ? "" : new String(points, 0, room - 1) + "…";
    }
}
