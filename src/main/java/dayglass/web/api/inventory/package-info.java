/** REST resources of {@link dayglass.inventory}: lens models, units, sets with their history, and the import of tables. */
@NullMarked
package dayglass.web.api.inventory;

import org.jspecify.annotations.NullMarked;
