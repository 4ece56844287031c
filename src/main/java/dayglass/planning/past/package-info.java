/** What the house's own past says of the years to come: its jobs by length and number, and what its glass sold for. */
@NullMarked
package dayglass.planning.past;

import org.jspecify.annotations.NullMarked;
