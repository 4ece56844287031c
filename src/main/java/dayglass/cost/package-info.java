/**
 * What a job costs: the calendar that every price looks at. Below it, {@code rental} prices one rental period,
 * {@code ownership} one purchase, and {@code plan} finds the least mix of both and explains it.
 *
 * <p>Pure computation: no database, web, file, clock, log, randomness or locale, and no knowledge of lenses or jobs
 * beyond names. It gets a fully resolved question and looks nothing up.
 */
@NullMarked
package dayglass.cost;

import org.jspecify.annotations.NullMarked;
