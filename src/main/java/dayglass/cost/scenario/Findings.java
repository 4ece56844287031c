package dayglass.cost.scenario;

import dayglass.base.Currency;
import dayglass.base.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What many draws say. {@code saving} is what renting costs above owning.
 *
 * @param draws that were done
 * @param asked how many were to be done; more where it was stopped
 * @param chanceOwningIsCheaper the share of draws in which it is
 * @param regretOfOwning what owning costs above the cheaper way, on average; zero where it is the cheaper way
 * @param tornado the widest bar first
 */
public record Findings(
        int draws,
        int asked,
        long seed,
        Range owning,
        Range renting,
        Range saving,
        double chanceOwningIsCheaper,
        Money regretOfOwning,
        Money regretOfRenting,
        List<Bar> tornado,
        List<Step> convergence,
        List<Bin> distribution) {
    private static final int STEPS = 20;
    private static final int BINS = 30;

    public Findings {
        tornado = List.copyOf(tornado);
        convergence = List.copyOf(convergence);
        distribution = List.copyOf(distribution);
    }

    /** Mean and percentiles (Hyndman and Fan's type 7), each rounded half up to the minor unit. */
    public record Range(Money mean, Money p10, Money p50, Money p90) {}

    /** The saving with one input moved to its P10 and to its P90 and all else as in the base case. */
    public record Bar(String input, double low, double high, Money savingAtLow, Money savingAtHigh) {
        Money width() {
            Money width = savingAtHigh.minus(savingAtLow);
            return width.signum() < 0 ? width.times(-1) : width;
        }
    }

    /** What the first so many draws say by themselves; the error is the standard error of the chance. */
    public record Step(int draws, double chanceOwningIsCheaper, double error, Money meanSaving) {}

    /** How many draws have a saving from here until there. */
    public record Bin(Money from, Money until, int draws) {}

    static Findings of(Scenario scenario, Uncertainty.Sample sample, double[][] costs, List<Bar> tornado) {
        Currency currency = scenario.base().currency();
        int draws = costs.length;
        double[] owning = new double[draws];
        double[] renting = new double[draws];
        double[] saving = new double[draws];
        double regretOfOwning = 0;
        double regretOfRenting = 0;
        for (int draw = 0; draw < draws; draw++) {
            owning[draw] = costs[draw][0];
            renting[draw] = costs[draw][1];
            saving[draw] = renting[draw] - owning[draw];
            regretOfOwning += Math.max(0, -saving[draw]);
            regretOfRenting += Math.max(0, saving[draw]);
        }
        List<Step> steps = steps(currency, saving);
        return new Findings(
                draws,
                sample.draws(),
                sample.seed(),
                range(currency, owning),
                range(currency, renting),
                range(currency, saving),
                steps.get(steps.size() - 1).chanceOwningIsCheaper(),
                money(currency, regretOfOwning / draws),
                money(currency, regretOfRenting / draws),
                tornado.stream()
                        .sorted(Comparator.comparing(Bar::width).reversed())
                        .toList(),
                steps,
                bins(currency, saving));
    }

    /** The bars of what is spread, one rerun for each end. */
    static List<Bar> bars(Scenario scenario) {
        List<Scenario.Input> inputs = scenario.inputs();
        double[] base = inputs.stream().mapToDouble(Scenario.Input::value).toArray();
        List<Bar> bars = new ArrayList<>();
        for (int at = 0; at < base.length; at++) {
            Optional<Spread> spread = inputs.get(at).spread();
            if (spread.isPresent()) {
                double low = spread.get().at(0.1);
                double high = spread.get().at(0.9);
                bars.add(new Bar(
                        inputs.get(at).name(),
                        low,
                        high,
                        savingWith(scenario, base, at, low),
                        savingWith(scenario, base, at, high)));
            }
        }
        return bars;
    }

    private static Money savingWith(Scenario scenario, double[] base, int input, double value) {
        double[] moved = Arrays.copyOf(base, base.length);
        moved[input] = value;
        double[] costs = scenario.costs(moved);
        return money(scenario.base().currency(), costs[1] - costs[0]);
    }

    private static Range range(Currency currency, double[] amounts) {
        double[] sorted = amounts.clone();
        Arrays.sort(sorted);
        return new Range(
                money(currency, Arrays.stream(amounts).sum() / amounts.length),
                money(currency, percentile(sorted, 0.1)),
                money(currency, percentile(sorted, 0.5)),
                money(currency, percentile(sorted, 0.9)));
    }

    /** Type 7 of Hyndman and Fan (1996), of numbers in ascending order. */
    static double percentile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private static List<Step> steps(Currency currency, double[] saving) {
        List<Step> steps = new ArrayList<>();
        int cheaper = 0;
        double sum = 0;
        int next = 1;
        for (int draw = 1; draw <= saving.length; draw++) {
            cheaper += saving[draw - 1] > 0 ? 1 : 0;
            sum += saving[draw - 1];
            if ((long) draw * STEPS >= (long) next * saving.length) {
                double chance = (double) cheaper / draw;
                steps.add(new Step(draw, chance, Math.sqrt(chance * (1 - chance) / draw), money(currency, sum / draw)));
                next = (int) ((long) draw * STEPS / saving.length) + 1;
            }
        }
        return steps;
    }

    private static List<Bin> bins(Currency currency, double[] saving) {
        double least = Arrays.stream(saving).min().orElseThrow();
        double most = Arrays.stream(saving).max().orElseThrow();
        double width = Math.max(1, Math.ceil((most - least + 1) / BINS));
        int[] counts = new int[BINS];
        for (double each : saving) {
            counts[(int) Math.min(BINS - 1, (each - least) / width)]++;
        }
        List<Bin> bins = new ArrayList<>();
        for (int bin = 0; bin < BINS && least + bin * width <= most; bin++) {
            bins.add(new Bin(
                    money(currency, least + bin * width), money(currency, least + (bin + 1) * width), counts[bin]));
        }
        return bins;
    }

    private static Money money(Currency currency, double minor) {
        return new Money(
                currency,
                new BigDecimal(minor).setScale(0, RoundingMode.HALF_UP).unscaledValue());
    }
}
