/** The bytes of {@link dayglass.inventory.picture} as files beside the database, with their previews. */
@NullMarked
package dayglass.storage.picture;

import org.jspecify.annotations.NullMarked;
