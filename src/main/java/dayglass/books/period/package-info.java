/**
 * The periods of the books: which days they cover, and that they were closed and opened again.
 *
 * <p>What closing a period posts belongs in {@code post}.
 */
@NullMarked
package dayglass.books.period;

import org.jspecify.annotations.NullMarked;
