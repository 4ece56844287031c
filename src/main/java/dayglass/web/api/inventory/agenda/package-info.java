/** REST resources of {@link dayglass.inventory.agenda}: what must be given back, and the calendar. */
@NullMarked
package dayglass.web.api.inventory.agenda;

import org.jspecify.annotations.NullMarked;
