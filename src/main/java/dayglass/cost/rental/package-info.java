/**
 * What one rental period costs: blocks laid end to end, long-hire discount, minimum, trip and add-ons, in that order.
 *
 * <p>{@link dayglass.cost.rental.RentalTerms} is the rate as written; pricing turns it into charges.
 */
@NullMarked
package dayglass.cost.rental;

import org.jspecify.annotations.NullMarked;
