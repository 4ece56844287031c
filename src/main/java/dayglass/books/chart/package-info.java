/** The production's own chart of cost codes: what it holds, and how it comes in from a table. */
@NullMarked
package dayglass.books.chart;

import org.jspecify.annotations.NullMarked;
