/**
 * The verdict under uncertainty: what is not known is drawn from distributions, and every draw is costed anew. Seeds are
 * arguments; the same seed gives the same figures, however many processors share the work.
 */
@NullMarked
package dayglass.cost.scenario;

import org.jspecify.annotations.NullMarked;
