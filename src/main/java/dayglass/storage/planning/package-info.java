/** The collections of {@link dayglass.planning} in the database: costings. Rules that need other rows are checked here. */
@NullMarked
package dayglass.storage.planning;

import org.jspecify.annotations.NullMarked;
