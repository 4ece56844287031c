/**
 * The options sheet of a job: each way judged against the brief, completed where it leaves something uncovered, and
 * costed by the engine.
 *
 * <p>Figures of a fit are {@code optics}', totals are the engine's; nothing here estimates either.
 */
@NullMarked
package dayglass.planning.ways;

import org.jspecify.annotations.NullMarked;
