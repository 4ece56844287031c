package dayglass.planning.ways;

import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One option as the best mix takes it.
 *
 * @param periods rental periods or purchases; of an owned unit 1
 * @param days on which it is paid for, over all rental periods; 0 where it is not rented
 */
public record Taken(String option, How how, int periods, int days) {
    /** How it is had. */
    public enum How {
        RENTED,
        BOUGHT,
        OWNED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** In the order of the plan. */
    static List<Taken> of(Answer answer) {
        Map<String, Taken> taken = new LinkedHashMap<>();
        answer.choices().forEach(choice -> taken.merge(choice.option(), of(choice), Taken::and));
        return List.copyOf(taken.values());
    }

    private static Taken of(Choice choice) {
        if (choice instanceof Choice.Rent rent) {
            return new Taken(rent.option(), How.RENTED, 1, rent.dates().days());
        }
        return new Taken(choice.option(), choice instanceof Choice.Buy ? How.BOUGHT : How.OWNED, 1, 0);
    }

    private Taken and(Taken other) {
        return new Taken(option, how, periods + other.periods, days + other.days);
    }
}
