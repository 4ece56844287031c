/**
 * Models and units as tables: which columns there are, how a row becomes a record and back, how a table is brought in
 * and taken out.
 *
 * <p>How a table is read from and written to a file belongs in {@code dayglass.sheet}.
 */
@NullMarked
package dayglass.shelf.table;

import org.jspecify.annotations.NullMarked;
