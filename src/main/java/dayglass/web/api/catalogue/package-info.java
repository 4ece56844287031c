/** REST resources of {@link dayglass.catalogue}: suppliers, rate cards and purchase offers. */
@NullMarked
package dayglass.web.api.catalogue;

import org.jspecify.annotations.NullMarked;
