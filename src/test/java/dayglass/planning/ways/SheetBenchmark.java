package dayglass.planning.ways;

import dayglass.cost.plan.LeastCost;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What the questions of a sheet take in processor time: 100 ways of a job of 60 days, with three slots. Prints the parts
 * of a sheet as ratios to the bare least cost of the same questions in the same run.
 */
public final class SheetBenchmark {
    private static final int WAYS = 100;
    private static final int ROUNDS = 5;

    private SheetBenchmark() {}

    private interface Part {
        void of(Question question);
    }

    public static void main(String[] arguments) {
        List<Question> questions =
                IntStream.range(0, WAYS).mapToObj(SheetBenchmark::way).toList();
        for (int round = 0; round < ROUNDS; round++) {
            double bare = seconds(questions, question -> LeastCost.best(question, StopSignal.NEVER));
            double whole = seconds(questions, question -> LeastCost.solve(question, StopSignal.NEVER));
            double bought = seconds(questions, question -> Bought.of(question, StopSignal.NEVER));
            double payback = seconds(questions, question -> Payback.of(OwnPart.of(question), StopSignal.NEVER));
            System.out.printf(
                    "bare %.3f s; plan with comparison and explanation %.1f, bought %.1f, payback %.1f times that;"
                            + " all of a sheet's questions %.2f s%n",
                    bare, whole / bare, bought / bare, payback / bare, whole + bought + payback);
        }
    }

    private static double seconds(List<Question> questions, Part part) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        questions.forEach(part::of);
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e9;
    }

    /** A set to buy and to rent, singles beside it; prices differ from way to way. */
    private static Question way(int number) {
        List<String> singles = new ArrayList<>();
        for (String slot : List.of("35 mm", "50 mm", "75 mm")) {
            singles.add("""
                    {"id": "single %s", "supplier": "Alder Hire", "covers": {"%s": 1}, "perTrip": "20.00",
                     "blocks": [{"days": 1, "price": "%d.00"}, {"days": 7, "price": "%d.00"}]}""".formatted(slot, slot, 80 + number % 17, 240 + 3 * (number % 23)));
        }
        singles.sort(Comparator.naturalOrder());
        return Asked.question("""
                {"job": "Way %d", "currency": "EUR",
                 "schedule": [{"from": "2027-03-01", "to": "2027-03-02", "use": "prep"},
                              {"from": "2027-03-03", "to": "2027-03-26", "use": "shoot"},
                              {"from": "2027-03-27", "to": "2027-04-01", "use": "dark"},
                              {"from": "2027-04-02", "to": "2027-04-29", "use": "shoot"}],
                 "needs": [{"slot": "35 mm", "count": 1}, {"slot": "50 mm", "count": 1}, {"slot": "75 mm", "count": 1}],
                 "rentals": [%s,
                   {"id": "set", "supplier": "Quay Hire", "covers": {"35 mm": 1, "50 mm": 1, "75 mm": 1}, "perTrip": "50.00",
                    "blocks": [{"days": 1, "price": "%d.00"}, {"days": 7, "price": "%d.00"}]}],
                 "purchases": [{"id": "bought", "supplier": "Quay Hire", "covers": {"35 mm": 1, "50 mm": 1, "75 mm": 1},
                    "price": "%d.00", "termMonths": 24, "resale": {"lossPercentPerYear": "12"}}]}""".formatted(
                        number, String.join(",\n", singles), 190 + number, 570 + 3 * number, 9_000 + 400 * number));
    }
}
