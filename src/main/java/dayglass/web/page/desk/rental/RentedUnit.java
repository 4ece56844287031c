package dayglass.web.page.desk.rental;

import dayglass.desk.rental.Rental.Check;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A unit of a rental, as it left and as it came back.
 *
 * @param accessories what belongs with it
 * @param differences how it came back otherwise than it went out
 * @param obstacles why it should not go out now
 * @param value its replacement value, to be charged where it is lost; empty where none is known
 */
public record RentedUnit(
        long unit,
        String tag,
        String name,
        String serial,
        Where where,
        List<String> accessories,
        Seen out,
        Seen back,
        List<String> differences,
        List<String> obstacles,
        String due,
        String value) {
    public RentedUnit {
        accessories = List.copyOf(accessories);
        differences = List.copyOf(differences);
        obstacles = List.copyOf(obstacles);
    }

    /** Where it is. */
    public enum Where {
        BOOKED,
        OUT,
        BACK
    }

    /**
     * What was seen at the door; all empty where it was not there yet.
     *
     * @param when and by whom, in words
     */
    public record Seen(List<String> accessories, String condition, String when) {
        static final Seen NOTHING = new Seen(List.of(), "", "");

        public Seen {
            accessories = List.copyOf(accessories);
        }

        static Seen of(Check check, String when) {
            return new Seen(check.accessories(), check.condition(), when);
        }
    }

    /** What is to be ticked at the return: what belongs with it, and what went out beside that. */
    public List<String> expected() {
        Set<String> all = new LinkedHashSet<>(out.accessories());
        all.addAll(accessories);
        return List.copyOf(all);
    }
}
