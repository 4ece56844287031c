/**
 * The pages of the shelf: lens models, units and sets, each listed, added, changed and removed, and tables that come in
 * and go out.
 *
 * <p>What a unit may do for a job belongs in the features; what the pages share lies in {@code dayglass.web.page}.
 */
@NullMarked
package dayglass.web.page.shelf;

import org.jspecify.annotations.NullMarked;
