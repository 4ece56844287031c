/** The collections of {@link dayglass.inventory.booking} in the database, whose triggers refuse any overlap. */
@NullMarked
package dayglass.storage.inventory.booking;

import org.jspecify.annotations.NullMarked;
