/**
 * Where a unit is when it is not free: bookings, bench visits and absences, holds in line for it, its going out and
 * coming back, and which units are free when.
 *
 * <p>What a rental costs and who pays belong to the desk.
 */
@NullMarked
package dayglass.inventory.booking;

import org.jspecify.annotations.NullMarked;
