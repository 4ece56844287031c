/**
 * The use case: a job with its cards, offers and units becomes a resolved question, the question an answer, and both
 * are kept as a costing that never changes.
 *
 * <p>The only feature that speaks the wire format, because a costing keeps its request and answer in it.
 */
@NullMarked
package dayglass.planning;

import org.jspecify.annotations.NullMarked;
