/**
 * What the house's own glass cost and earned, what it is worth, and whether to keep it a year more. Only reads, and works
 * a verdict out as {@code cost.verdict} does; nothing is kept.
 */
@NullMarked
package dayglass.inventory.worth;

import org.jspecify.annotations.NullMarked;
