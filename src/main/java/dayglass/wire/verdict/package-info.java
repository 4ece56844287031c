/**
 * A verdict on the wire: the choice between owning and renting, with every fault, and what it comes to.
 *
 * <p>Knows {@code dayglass.cost} and neither web nor database.
 */
@NullMarked
package dayglass.wire.verdict;

import org.jspecify.annotations.NullMarked;
