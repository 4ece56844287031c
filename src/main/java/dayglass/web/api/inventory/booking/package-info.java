/** Bookings, bench visits, absences, holds and availability over REST. */
@NullMarked
package dayglass.web.api.inventory.booking;

import org.jspecify.annotations.NullMarked;
