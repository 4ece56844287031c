/**
 * A job: its shoot schedule, what it needs on which days, and which ways of getting it are considered; its brief and the
 * ways that its options sheet compares.
 *
 * <p>Turning a job into a costing is the business of {@code planning}.
 */
@NullMarked
package dayglass.job;

import org.jspecify.annotations.NullMarked;
