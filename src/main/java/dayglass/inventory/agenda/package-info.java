/**
 * What the house has to do and when: what goes out and comes back, what falls due for service, and what belongs to others
 * and must be given back. Only read: the facts are entered in the other packages.
 */
@NullMarked
package dayglass.inventory.agenda;

import org.jspecify.annotations.NullMarked;
