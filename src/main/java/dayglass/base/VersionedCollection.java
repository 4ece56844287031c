package dayglass.base;

import java.util.List;
import java.util.Optional;

/**
 * Things that are kept, changed by one caller at a time and removed. A change names the version it was based on and is
 * refused as stale where another came first.
 */
public interface VersionedCollection<I extends Id, T> {
    Outcome<Stored<I, T>> add(T facts);

    Optional<Stored<I, T>> find(I id);

    /**
     * By id, in order.
     *
     * @param after only those after this one
     * @param most at most so many
     */
    List<Stored<I, T>> list(Optional<I> after, int most);

    /**
     * Puts new facts in the place of the old.
     *
     * @param change with the version that the new facts were based on
     */
    Outcome<Stored<I, T>> change(Stored<I, T> change);

    /** Refused where something else still points to it. */
    Outcome<I> remove(I id, long version);
}
