/**
 * Calendars as text by RFC 5545, for programs that subscribe to them. Knows no lens and no booking: who has something to
 * tell makes events of it.
 */
@NullMarked
package dayglass.calendar;

import org.jspecify.annotations.NullMarked;
