/**
 * The collections of {@link dayglass.books} in the database: cost codes, entries, periods, charts and invoices, and the
 * check of the entries' chain. Rules that need other rows are checked here.
 */
@NullMarked
package dayglass.storage.books;

import org.jspecify.annotations.NullMarked;
