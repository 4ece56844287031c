/** The pages of jobs: what is asked for, what may serve, and the costings under way. */
@NullMarked
package dayglass.web.page.job;

import org.jspecify.annotations.NullMarked;
