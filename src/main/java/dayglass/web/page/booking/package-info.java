/**
 * Pages of bookings, bench visits, absences and holds: what is free, what is ahead, and each of them with its going out
 * and coming back. The wall has a package of its own.
 */
@NullMarked
package dayglass.web.page.booking;

import org.jspecify.annotations.NullMarked;
