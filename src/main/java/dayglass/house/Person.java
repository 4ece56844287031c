package dayglass.house;

/**
 * Somebody who stands behind records.
 *
 * @param gone no longer acts; the name stays behind what was recorded
 */
public record Person(String name, Role role, boolean gone) {
    /** The number of a person. */
    public record Id(long number) implements dayglass.base.Id {}
}
