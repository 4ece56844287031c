/** What the house's own glass is worth, over REST. */
@NullMarked
package dayglass.web.api.inventory.worth;

import org.jspecify.annotations.NullMarked;
