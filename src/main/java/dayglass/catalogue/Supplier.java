package dayglass.catalogue;

/**
 * A house that lets or sells.
 *
 * @param name unique
 */
public record Supplier(String name) {
    /** The number of a supplier. */
    public record Id(long number) implements dayglass.base.Id {}
}
