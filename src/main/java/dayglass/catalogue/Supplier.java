package dayglass.catalogue;

/**
 * A house that lets or sells.
 *
 * @param name unique
 * @param house it is this house itself, whose cards say what the shelf is let for; one at most
 */
public record Supplier(String name, boolean house) {
    /** Somebody else. */
    public Supplier(String name) {
        this(name, false);
    }

    /** The number of a supplier. */
    public record Id(long number) implements dayglass.base.Id {}
}
