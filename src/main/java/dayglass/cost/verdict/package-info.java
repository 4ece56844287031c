/**
 * Buy, or rent instead over years: the same jobs at the cards' best cover, where the two cost the same, and the rule for
 * whoever does not know the future. Chance is none of its business; it lies in {@code scenario}.
 */
@NullMarked
package dayglass.cost.verdict;

import org.jspecify.annotations.NullMarked;
