/** The collections of {@link dayglass.job} in the database: jobs with what they consider. Rules that need other rows are checked here. */
@NullMarked
package dayglass.storage.job;

import org.jspecify.annotations.NullMarked;
