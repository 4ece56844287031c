/** The desk as pages: suppliers and the house itself, with their rate cards, rates and purchase offers. */
@NullMarked
package dayglass.web.page.desk;

import org.jspecify.annotations.NullMarked;
