/**
 * The lens models known, and who lets and sells lenses at what price: suppliers, their dated rate cards and offers.
 *
 * <p>Nearly plain records with their collections; what a price comes to is worked out in {@code cost}.
 */
@NullMarked
package dayglass.catalogue;

import org.jspecify.annotations.NullMarked;
