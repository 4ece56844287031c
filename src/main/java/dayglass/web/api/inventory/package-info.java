/** REST resources of {@link dayglass.inventory}: owned units. */
@NullMarked
package dayglass.web.api.inventory;

import org.jspecify.annotations.NullMarked;
