/**
 * The least-cost plan: which rental periods, purchases and owned units cover every slot on every day at the least
 * total, how certain that is, and why.
 *
 * <p>{@link dayglass.cost.plan.Question} goes in, {@link dayglass.cost.plan.Costing} comes out of
 * {@link dayglass.cost.plan.LeastCost}.
 */
@NullMarked
package dayglass.cost.plan;

import org.jspecify.annotations.NullMarked;
