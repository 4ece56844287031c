/** The collections of {@link dayglass.inventory} in the database: units and sets. Rules that need other rows are checked here. */
@NullMarked
package dayglass.storage.inventory;

import org.jspecify.annotations.NullMarked;
