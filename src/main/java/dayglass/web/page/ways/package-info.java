/**
 * The pages of a job's brief, its ways and its options sheet, on screen, on paper and as a table to take away.
 *
 * <p>What a row says is worked out in {@code planning.ways}; here it is only put into words and drawn.
 */
@NullMarked
package dayglass.web.page.ways;

import org.jspecify.annotations.NullMarked;
