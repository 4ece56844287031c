/**
 * Writes entries to a stream as CSV, XLSX and JSON, with control totals that say what an export holds, however many
 * there are.
 *
 * <p>The columns and their order are the contract. No path, clock, locale or time zone is looked at, so that the same
 * entries give the same bytes everywhere and for ever.
 */
@NullMarked
package dayglass.books.export;

import org.jspecify.annotations.NullMarked;
