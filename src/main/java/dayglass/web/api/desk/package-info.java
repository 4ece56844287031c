/** The desk over REST: packages priced, quotes, rentals and the rules that they follow. */
@NullMarked
package dayglass.web.api.desk;

import org.jspecify.annotations.NullMarked;
