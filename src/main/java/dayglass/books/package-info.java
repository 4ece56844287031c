/**
 * The books: what a costing means for the production accountant, as lines that can be posted and, apart from them, the
 * costs that the plan only weighs.
 *
 * <p>A job's cost codes are kept behind an interface of this room. Lines are values; {@code file} below writes them as CSV, XLSX and a companion JSON. No database, no web.
 */
@NullMarked
package dayglass.books;

import org.jspecify.annotations.NullMarked;
