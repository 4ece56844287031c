package dayglass.desk.price;

import dayglass.base.Percent;
import dayglass.cost.Schedule;
import java.util.List;

/**
 * What a caller asks for, and on which days.
 *
 * @param schedule the days of use; each is charged but dark ones, over which glass is kept or given back as is cheaper
 * @param insured the customer brings proof of insurance, so that no waiver is charged
 * @param off the discount on the hire of the whole, where a line has none of its own
 * @param reason why there is a discount
 */
public record PackageAsked(List<Asked> lines, Schedule schedule, boolean insured, Percent off, String reason) {
    public PackageAsked {
        lines = List.copyOf(lines);
    }

    /**
     * One line.
     *
     * @param off the discount on the hire of this line; zero for that of the whole
     */
    public record Asked(Wish wish, int count, Percent off) {}

    /** The same on other days. */
    PackageAsked on(Schedule other) {
        return new PackageAsked(lines, other, insured, off, reason);
    }

    /** The discount of a line. */
    Percent off(int line) {
        Percent own = lines.get(line).off();
        return own.value().signum() == 0 ? off : own;
    }
}
