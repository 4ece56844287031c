/** REST resources of {@link dayglass.planning}: costings, their repetition and comparison. */
@NullMarked
package dayglass.web.api.planning;

import org.jspecify.annotations.NullMarked;
