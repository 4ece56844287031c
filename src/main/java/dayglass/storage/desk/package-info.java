/** The desk's rules, quotes and rentals as rows. */
@NullMarked
package dayglass.storage.desk;

import org.jspecify.annotations.NullMarked;
