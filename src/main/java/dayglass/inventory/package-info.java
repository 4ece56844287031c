/**
 * The shelf: physical units that the house owns, in their simplest form.
 *
 * <p>Rates and offers of others belong in {@code catalogue}.
 */
@NullMarked
package dayglass.inventory;

import org.jspecify.annotations.NullMarked;
