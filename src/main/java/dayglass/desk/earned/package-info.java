/**
 * What the desk's rentals bring the units that went out on them. Only reads: every figure follows from what the rentals say,
 * and nothing of it is kept.
 */
@NullMarked
package dayglass.desk.earned;

import org.jspecify.annotations.NullMarked;
