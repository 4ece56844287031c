/**
 * The wall: every unit by day for the coming weeks, as a picture; and the scan that opens a unit by its tag.
 *
 * <p>What occupies a unit is known to {@code dayglass.inventory.booking}.
 */
@NullMarked
package dayglass.web.page.wall;

import org.jspecify.annotations.NullMarked;
