/** The pages of a kept costing: its choices, its lines for the accountant, what changed since another. */
@NullMarked
package dayglass.web.page.costing;

import org.jspecify.annotations.NullMarked;
