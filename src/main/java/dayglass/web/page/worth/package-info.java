/** The page of the house's own glass: what it cost and earned, what it is worth, whether to keep it. */
@NullMarked
package dayglass.web.page.worth;

import org.jspecify.annotations.NullMarked;
