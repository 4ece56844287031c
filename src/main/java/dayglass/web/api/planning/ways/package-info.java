/** REST resources of a job's brief, its ways and its options sheets. */
@NullMarked
package dayglass.web.api.planning.ways;

import org.jspecify.annotations.NullMarked;
