/** Fits over REST: what is asked is judged and answered; nothing is kept. */
@NullMarked
package dayglass.web.api.optics;

import org.jspecify.annotations.NullMarked;
