/**
 * A costing on the wire: the request into a question with every fault, a question back into its request, and what
 * comes of it as an answer or a problem document.
 *
 * <p>One small reader for each part of the request, so that a rate card's rate or a job's schedule can be read by
 * itself. Knows the question and the answer of {@code dayglass.cost.plan}, and neither web nor database.
 */
@NullMarked
package dayglass.wire.costing;

import org.jspecify.annotations.NullMarked;
