package dayglass.books.period;

/**
 * The end of the chain at a moment.
 *
 * @param entry the number of the last entry, which is also their count; 0 where there is none
 * @param hash of the last entry
 */
public record Head(long entry, String hash) {}
