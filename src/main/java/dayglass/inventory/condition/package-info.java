/**
 * What was seen on a unit and what its condition is now: notes that are never changed, findings that later notes resolve.
 *
 * <p>What is done about it on the bench does not belong here.
 */
@NullMarked
package dayglass.inventory.condition;

import org.jspecify.annotations.NullMarked;
