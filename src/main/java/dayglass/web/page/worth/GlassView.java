package dayglass.web.page.worth;

import java.util.List;

/**
 * My glass as the page shows it.
 *
 * @param sets shown with the first units only
 * @param units those of the run
 * @param totals what all of it comes to, a line a currency
 * @param unknown how many units cannot be weighed
 */
public record GlassView(
        String on, boolean lettingRecorded, List<Row> sets, List<Row> units, Run run, List<Total> totals, int unknown) {
    public GlassView {
        sets = List.copyOf(sets);
        units = List.copyOf(units);
        totals = List.copyOf(totals);
    }

    /**
     * Which units are shown.
     *
     * @param before how many come before them
     * @param all how many there are
     */
    public record Run(int before, int shown, int all) {
        private static final int MOST = 100;

        /** From one on, as many as are shown at once. */
        static Run from(int wanted, int all) {
            int before = Math.max(0, Math.min(wanted, all - 1)) / MOST * MOST;
            return new Run(before, Math.min(MOST, all - before), all);
        }

        public boolean whole() {
            return shown == all;
        }

        public boolean hasEarlier() {
            return before > 0;
        }

        public int earlier() {
            return before - MOST;
        }

        public boolean hasFurther() {
            return before + shown < all;
        }

        public int further() {
            return before + MOST;
        }
    }

    /**
     * One unit or set; a figure that is not known is empty text.
     *
     * @param model of a unit, or what a set consists of
     * @param word {@code keep}, {@code sell}, {@code either} or empty
     * @param because why something cannot be told
     */
    public record Row(
            String name,
            String address,
            String model,
            String cost,
            String earned,
            String promised,
            String out,
            String value,
            String gain,
            String word,
            String because,
            List<Part> parts) {
        public Row {
            parts = List.copyOf(parts);
        }
    }

    /** The lines that a figure is made of. */
    public record Part(String title, List<Line> lines, String note) {
        public Part {
            lines = List.copyOf(lines);
        }
    }

    /** A line; {@code sum} where it adds up those above. */
    public record Line(String label, String amount, boolean sum) {}

    /** Sums of one currency, over the units of which they are known. */
    public record Total(String currency, String cost, String earned, String value, String gain) {}
}
