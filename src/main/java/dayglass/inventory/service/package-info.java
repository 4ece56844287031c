/**
 * When units are to be serviced, and what falls due. What was done on the bench is in {@code inventory.booking}, as a
 * visit occupies the unit; what was found is in {@code inventory.condition}.
 */
@NullMarked
package dayglass.inventory.service;

import org.jspecify.annotations.NullMarked;
