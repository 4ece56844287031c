/**
 * The entries of the books: what each says, how it is split and reversed, and the chain of hashes over all of them.
 *
 * <p>An entry is never changed or removed. Which entries an act of business makes belongs in {@code post}.
 */
@NullMarked
package dayglass.books.entry;

import org.jspecify.annotations.NullMarked;
