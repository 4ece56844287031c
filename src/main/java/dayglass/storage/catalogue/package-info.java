/** The collections of {@link dayglass.catalogue} in the database: suppliers, rate cards, purchase offers and lens models. Rules that need other rows are checked here. */
@NullMarked
package dayglass.storage.catalogue;

import org.jspecify.annotations.NullMarked;
