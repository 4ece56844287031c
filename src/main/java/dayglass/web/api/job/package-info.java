/** REST resources of {@link dayglass.job}: jobs, their copies, imports and resolved requests. */
@NullMarked
package dayglass.web.api.job;

import org.jspecify.annotations.NullMarked;
