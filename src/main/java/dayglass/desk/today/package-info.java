/**
 * One day at the desk: what goes out and comes back by the hour, what is late, what has still to be got, and what has to be
 * looked at before it goes again. Only reads; what is done about it is done in the other packages.
 */
@NullMarked
package dayglass.desk.today;

import org.jspecify.annotations.NullMarked;
