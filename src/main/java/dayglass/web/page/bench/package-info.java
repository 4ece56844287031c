/** The bench: what falls due for service, what is on the bench, and the plans behind it. */
@NullMarked
package dayglass.web.page.bench;

import org.jspecify.annotations.NullMarked;
