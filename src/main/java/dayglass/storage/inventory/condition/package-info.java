/** The notes of {@link dayglass.inventory.condition} in the database. */
@NullMarked
package dayglass.storage.inventory.condition;

import org.jspecify.annotations.NullMarked;
