/** Rentals: what was promised and is booked, handed over, taken back, charged for and billed. */
@NullMarked
package dayglass.desk.rental;

import org.jspecify.annotations.NullMarked;
