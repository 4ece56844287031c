/**
 * Tables as files: rows and columns written as CSV and XLSX, and CSV read. The only place that knows a file format's
 * library.
 *
 * <p>What a column means belongs to whoever has the table. No path, clock, locale or time zone is looked at, so the
 * same table gives the same bytes everywhere.
 */
@NullMarked
package dayglass.sheet;

import org.jspecify.annotations.NullMarked;
