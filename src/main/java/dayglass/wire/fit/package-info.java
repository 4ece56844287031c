/**
 * A fit on the wire: what is asked of a lens on a camera, with every fault, and what it comes to.
 *
 * <p>Knows {@code dayglass.optics} and neither web nor database.
 */
@NullMarked
package dayglass.wire.fit;

import org.jspecify.annotations.NullMarked;
