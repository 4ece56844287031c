/** Dates as people say them; pure but for the day that is told as today. */
@NullMarked
package dayglass.desk.words;

import org.jspecify.annotations.NullMarked;
