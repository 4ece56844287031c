/**
 * The plain values that every room shares: money, percentages, date ranges, shares, faults and outcomes.
 *
 * <p>Pure: no database, clock, web, file or locale. A value belongs here only when two rooms or more speak of it.
 */
@NullMarked
package dayglass.base;

import org.jspecify.annotations.NullMarked;
