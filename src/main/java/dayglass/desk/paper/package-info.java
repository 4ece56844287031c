/**
 * What the papers of a quote and a rental say, in figures and facts; how they look is not settled here. Nothing is kept:
 * each follows from the rental and the shelf as they stand.
 */
@NullMarked
package dayglass.desk.paper;

import org.jspecify.annotations.NullMarked;
