/**
 * Gear of the house's own in the books: what it was bought for is written off over the years, what it earns by letting and
 * costs in service is entered, and when it goes, gain or loss is posted. For the books alone; no tax advice.
 */
@NullMarked
package dayglass.books.gear;

import org.jspecify.annotations.NullMarked;
