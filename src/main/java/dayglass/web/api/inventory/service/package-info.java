/** REST resources of {@link dayglass.inventory.service}: plans, and what falls due. */
@NullMarked
package dayglass.web.api.inventory.service;

import org.jspecify.annotations.NullMarked;
