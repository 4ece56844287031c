/**
 * The shelf: the physical units that the house has, and the sets that go out together.
 *
 * <p>Rates and offers of others belong in {@code catalogue}.
 */
@NullMarked
package dayglass.inventory;

import org.jspecify.annotations.NullMarked;
