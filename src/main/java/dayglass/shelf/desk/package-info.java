/**
 * What the desk keeps as JSON, alike in REST and in the database: packages asked for, prices, quotes, rentals, rules.
 * Amounts are text in the currency that the object names.
 */
@NullMarked
package dayglass.shelf.desk;

import org.jspecify.annotations.NullMarked;
