/**
 * Who lets and sells lenses and at what price: suppliers, their dated rate cards and their purchase offers.
 *
 * <p>Nearly plain records with their collections; what a price comes to is worked out in {@code cost}.
 */
@NullMarked
package dayglass.catalogue;

import org.jspecify.annotations.NullMarked;
