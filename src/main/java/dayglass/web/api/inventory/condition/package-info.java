/** REST resources of {@link dayglass.inventory.condition}: notes on a unit, and pictures. */
@NullMarked
package dayglass.web.api.inventory.condition;

import org.jspecify.annotations.NullMarked;
