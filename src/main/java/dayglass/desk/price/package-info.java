/** Prices a package: what is free on the shelf at the house's own rates, sets against singles, and what is short from suppliers. */
@NullMarked
package dayglass.desk.price;

import org.jspecify.annotations.NullMarked;
