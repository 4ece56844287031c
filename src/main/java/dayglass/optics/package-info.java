/**
 * Does a lens give the job its picture: one lens, perhaps with a front attachment, on one camera for one delivery. Pure
 * arithmetic; one class a check in {@code check}.
 *
 * <p>What a lens costs and who has it belong elsewhere.
 */
@NullMarked
package dayglass.optics;

import org.jspecify.annotations.NullMarked;
