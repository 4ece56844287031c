/** The cost report: what a job was estimated at, what is ordered, invoiced and accrued, and what it will come to. */
@NullMarked
package dayglass.books.report;

import org.jspecify.annotations.NullMarked;
