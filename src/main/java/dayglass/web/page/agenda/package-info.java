/** Pages of what the house has to do. */
@NullMarked
package dayglass.web.page.agenda;

import org.jspecify.annotations.NullMarked;
