/**
 * Writes the lines of a costing to a stream: CSV for programs, XLSX for people, a companion JSON that says what an
 * export holds.
 *
 * <p>Which columns and sheets only: what a line says is decided in {@code books}, how a table is written in {@code
 * sheet}. No path, clock, locale or time zone is looked at, so
 * the same lines give the same bytes everywhere.
 */
@NullMarked
package dayglass.books.file;

import org.jspecify.annotations.NullMarked;
