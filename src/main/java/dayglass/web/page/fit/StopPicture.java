package dayglass.web.page.fit;

import dayglass.optics.FitQuestion;
import dayglass.optics.check.Fit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A scale of whole stops with marks on it. A stop is as wide everywhere: the place of N is 2·log2 N.
 *
 * @param width of the drawing
 */
public record StopPicture(int width, List<Tick> ticks, List<Mark> marks) {
    private static final int STOP_WIDTH = 90;
    private static final int MARGIN = 30;
    private static final int LEAST_STOPS = 6;

    public StopPicture {
        ticks = List.copyOf(ticks);
        marks = List.copyOf(marks);
    }

    /** A whole stop: 1, 1.4, 2, 2.8. */
    public record Tick(String x, String number) {}

    /**
     * Something on the scale.
     *
     * @param row below the scale, from 0
     * @param leftward its words stand to the left of it
     */
    public record Mark(String x, int row, String words, boolean leftward, boolean allowed) {}

    static StopPicture of(FitQuestion question, Fit fit) {
        List<String> words = new ArrayList<>(List.of("wide open", "working stop"));
        List<BigDecimal> stops = new ArrayList<>(List.of(question.lens().tStop(), fit.workingStop()));
        if (question.lightLossStops().signum() > 0) {
            words.add("its worth in light");
            stops.add(fit.workingStopInLight());
        }
        fit.light().ifPresent(light -> {
            words.add("the light allows");
            stops.add(light.lightAllows());
        });
        double least = stops.stream().mapToDouble(StopPicture::stop).min().orElse(0);
        double most = stops.stream().mapToDouble(StopPicture::stop).max().orElse(0);
        int first = (int) Math.floor(least) - 1;
        int last = Math.max((int) Math.ceil(most) + 1, first + LEAST_STOPS);
        List<Tick> ticks = new ArrayList<>();
        for (int at = first; at <= last; at++) {
            ticks.add(new Tick(place(at, first), number(at)));
        }
        List<Mark> marks = new ArrayList<>();
        for (int at = 0; at < stops.size(); at++) {
            String n = stops.get(at).toPlainString();
            marks.add(new Mark(
                    place(stop(stops.get(at)), first),
                    at,
                    words.get(at) + ": T" + n,
                    stop(stops.get(at)) - first > (last - first) / 2.0,
                    words.get(at).startsWith("the light")));
        }
        return new StopPicture(2 * MARGIN + (last - first) * STOP_WIDTH, ticks, marks);
    }

    private static double stop(BigDecimal number) {
        return 2 * Math.log(number.doubleValue()) / Math.log(2);
    }

    private static String place(double stop, int first) {
        return String.format(Locale.ROOT, "%.2f", MARGIN + (stop - first) * STOP_WIDTH);
    }

    /** As it is engraved: two digits, and 5.6, 11, 22 by custom. */
    private static String number(int stop) {
        double exact = Math.pow(2, stop / 2.0);
        String engraved = exact < 10
                ? String.format(Locale.ROOT, "%.1f", Math.floor(exact * 10 + 1e-9) / 10)
                : String.valueOf((int) exact);
        return engraved.endsWith(".0") ? engraved.substring(0, engraved.length() - 2) : engraved;
    }
}
