/** Labels for units: the tag as a QR or Code 128 symbol, laid out on sheets. */
@NullMarked
package dayglass.web.page.label;

import org.jspecify.annotations.NullMarked;
