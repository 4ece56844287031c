package dayglass.web.page.verdict;

import dayglass.base.Money;
import dayglass.cost.ownership.CashFlow;
import dayglass.cost.scenario.Findings;
import dayglass.cost.scenario.VerdictWords;
import dayglass.cost.verdict.BreakEven;
import dayglass.web.page.picture.Scale;
import dayglass.web.page.picture.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** The pictures of a verdict. */
final class Charts {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 280;
    private static final int TOP = 14;
    private static final int BOTTOM = 246;
    private static final int ROW = 44;
    private static final int TORNADO_LEFT = 40;
    private static final int TORNADO_RIGHT = 44;
    private static final int MARK_ROOM = 420;

    private Charts() {}

    private static double of(Money money) {
        return money.major().doubleValue();
    }

    /** A bar a month: up what comes in, down what goes out. */
    static Chart cashFlow(List<CashFlow.Month> months) {
        Scale up = scale(months.stream().mapToDouble(month -> of(month.sum())), BOTTOM, TOP);
        Scale across = Scale.filled(0, months.size(), Chart.LEFT, Chart.RIGHT);
        List<Chart.Box> boxes = new ArrayList<>();
        int nought = up.at(0);
        for (CashFlow.Month month : months) {
            int x = across.at(month.month());
            int y = up.at(of(month.sum()));
            boxes.add(new Chart.Box(
                    x,
                    Math.min(y, nought),
                    Math.max(1, across.at(month.month() + 1.0) - x - 1),
                    Math.max(1, Math.abs(nought - y)),
                    month.sum().signum() < 0 ? "out" : "in",
                    "month " + month.month() + ": " + Words.money(month.sum())));
        }
        return new Chart(
                WIDTH, HEIGHT, "Money in and out by month", across.ticks(), up.ticks(), List.of(), boxes, List.of());
    }

    /** What owning and renting cost along a curve, with the places where they cross. */
    static Chart curve(BreakEven found, String told) {
        List<BreakEven.Point> curve = found.curve();
        Scale up = scale(
                curve.stream().flatMapToDouble(point -> DoubleStream.of(of(point.owning()), of(point.renting()))),
                BOTTOM,
                TOP);
        Scale across = Scale.filled(0, curve.get(curve.size() - 1).place().doubleValue(), Chart.LEFT, Chart.RIGHT);
        List<Chart.Mark> marks = new ArrayList<>();
        for (BreakEven.Crossing crossing : found.crossings()) {
            int x = across.at(crossing.at().doubleValue());
            marks.add(new Chart.Mark(
                    x,
                    up.at(of(crossing.before().owning())),
                    crossing.at().stripTrailingZeros().toPlainString(),
                    x > MARK_ROOM));
        }
        return new Chart(
                WIDTH,
                HEIGHT,
                told,
                across.ticks(),
                up.ticks(),
                List.of(
                        line(curve, across, up, new Named("owning", BreakEven.Point::owning)),
                        line(curve, across, up, new Named("renting", BreakEven.Point::renting))),
                List.of(),
                marks);
    }

    private record Named(String name, Function<BreakEven.Point, Money> cost) {}

    private static Chart.Line line(List<BreakEven.Point> curve, Scale across, Scale up, Named named) {
        String points = curve.stream()
                .map(point -> across.at(point.place().doubleValue()) + ","
                        + up.at(of(named.cost().apply(point))))
                .collect(Collectors.joining(" "));
        BreakEven.Point last = curve.get(curve.size() - 1);
        return new Chart.Line(
                points,
                named.name(),
                named.name(),
                across.at(last.place().doubleValue()) + 6,
                up.at(of(named.cost().apply(last))) + 4);
    }

    /** A bar for each input that is not sure: the saving at its low and high end. */
    static Chart tornado(Findings found) {
        int height = found.tornado().size() * ROW + TOP + HEIGHT - BOTTOM;
        Scale across = scale(
                found.tornado().stream()
                        .flatMapToDouble(bar -> DoubleStream.of(of(bar.savingAtLow()), of(bar.savingAtHigh()))),
                TORNADO_LEFT,
                WIDTH - TORNADO_RIGHT);
        List<Chart.Box> boxes = new ArrayList<>();
        List<Chart.Mark> marks = new ArrayList<>();
        int y = TOP;
        for (Findings.Bar bar : found.tornado()) {
            int low = across.at(of(bar.savingAtLow()));
            int high = across.at(of(bar.savingAtHigh()));
            String title =
                    bar.input() + ": " + VerdictWords.number(bar.low()) + " to " + VerdictWords.number(bar.high());
            boxes.add(new Chart.Box(
                    Math.min(low, high),
                    y + 18,
                    Math.max(2, Math.abs(high - low)),
                    16,
                    "swing",
                    title + ", saving " + Words.money(bar.savingAtLow()) + " to " + Words.money(bar.savingAtHigh())));
            marks.add(new Chart.Mark(TORNADO_LEFT + 4, y + 13, title, false));
            y += ROW;
        }
        return new Chart(WIDTH, height, "What matters most", across.ticks(), List.of(), List.of(), boxes, marks);
    }

    /** How often each saving was drawn. */
    static Chart distribution(Findings found) {
        List<Findings.Bin> bins = found.distribution();
        Scale across = Scale.filled(
                of(bins.get(0).from()), of(bins.get(bins.size() - 1).until()), Chart.LEFT, Chart.RIGHT);
        Scale up =
                new Scale(0, bins.stream().mapToInt(Findings.Bin::draws).max().orElse(1), BOTTOM, TOP);
        List<Chart.Box> boxes = new ArrayList<>();
        for (Findings.Bin bin : bins) {
            int x = across.at(of(bin.from()));
            int y = up.at(bin.draws());
            boxes.add(new Chart.Box(
                    x,
                    y,
                    Math.max(1, across.at(of(bin.until())) - x - 1),
                    BOTTOM - y,
                    bin.from().signum() < 0 ? "out" : "in",
                    bin.draws() + " draws from " + Words.money(bin.from()) + " on"));
        }
        return new Chart(
                WIDTH,
                HEIGHT,
                "What owning saves, by how often it was drawn",
                across.ticks(),
                up.ticks(),
                List.of(),
                boxes,
                List.of());
    }

    /** A scale that holds all values and nought. */
    private static Scale scale(DoubleStream values, int from, int to) {
        double[] all = values.toArray();
        double least = Math.min(0, DoubleStream.of(all).min().orElse(0));
        double most = Math.max(0, DoubleStream.of(all).max().orElse(1));
        return new Scale(least, most, from, to);
    }
}
