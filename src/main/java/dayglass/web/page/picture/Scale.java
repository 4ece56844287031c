package dayglass.web.page.picture;

import java.util.ArrayList;
import java.util.List;

/** From amounts to places along an axis, with round ticks. For drawing alone. */
public final class Scale {
    private static final int TICKS = 5;
    private static final char NARROW_SPACE = '\u202f';
    private static final char MINUS = '\u2212';

    private final double least;
    private final double most;
    private final int from;
    private final int to;
    private final double step;

    /** A place on an axis with its label; {@code strong} for nought. */
    public record Tick(int at, String label, boolean strong) {}

    /** Places {@code least} at {@code from} and {@code most} at {@code to}, both moved out to round numbers. */
    public Scale(double least, double most, int from, int to) {
        this.step = roundStep(Math.max(most - least, 1e-6) / TICKS);
        this.least = Math.floor(least / step) * step;
        this.most = Math.max(Math.ceil(most / step) * step, this.least + step);
        this.from = from;
        this.to = to;
    }

    private static double roundStep(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double part : new double[] {1, 2, 5}) {
            if (part * power >= rough) {
                return part * power;
            }
        }
        return 10 * power;
    }

    /** The same without moving the ends out, for an axis that a picture fills from end to end. */
    public static Scale filled(double least, double most, int from, int to) {
        return new Scale(new Ends(least, most), from, to);
    }

    private record Ends(double least, double most) {}

    private Scale(Ends ends, int from, int to) {
        this.step = roundStep(Math.max(ends.most() - ends.least(), 1e-6) / TICKS);
        this.least = ends.least();
        this.most = Math.max(ends.most(), ends.least() + step / TICKS);
        this.from = from;
        this.to = to;
    }

    /** Where a value lies. */
    public int at(double value) {
        return (int) Math.round(from + (value - least) / (most - least) * (to - from));
    }

    /** The round values between its ends. */
    public List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        double first = Math.ceil(least / step - 1e-9) * step;
        for (int tick = 0; first + tick * step <= most + step / 1e6; tick++) {
            double value = first + tick * step;
            ticks.add(new Tick(at(value), label(value), Math.abs(value) < step / 2));
        }
        return ticks;
    }

    /** Thousands apart by a narrow space; no decimals from one up. */
    private String label(double value) {
        if (step < 1) {
            return String.valueOf(Math.round(value * 100) / 100.0);
        }
        String digits = String.valueOf(Math.abs(Math.round(value)));
        StringBuilder text = new StringBuilder(digits);
        for (int at = digits.length() - 3; at > 0; at -= 3) {
            text.insert(at, NARROW_SPACE);
        }
        return (Math.round(value) < 0 ? String.valueOf(MINUS) : "") + text;
    }
}
