/**
 * A unit's life as one story: everything that ever happened to it, what it cost and earned, and how much it was out. Only
 * read: what happens is entered in the other packages.
 */
@NullMarked
package dayglass.inventory.life;

import org.jspecify.annotations.NullMarked;
