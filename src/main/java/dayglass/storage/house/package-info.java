/** The collections of {@link dayglass.house} in the database: people, settings, changes, answers kept by key. */
@NullMarked
package dayglass.storage.house;

import org.jspecify.annotations.NullMarked;
