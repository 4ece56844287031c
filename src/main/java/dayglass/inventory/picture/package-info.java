/**
 * Pictures by what their bytes are: what kind, how large, which way up, and whether they are whole; pure.
 *
 * <p>Decoding and keeping them belongs to the storage.
 */
@NullMarked
package dayglass.inventory.picture;

import org.jspecify.annotations.NullMarked;
