/**
 * What every room shares: the house's own settings, its people and who acts, and the record of who changed what.
 *
 * <p>What a person may do in a room belongs in that room.
 */
@NullMarked
package dayglass.house;

import org.jspecify.annotations.NullMarked;
