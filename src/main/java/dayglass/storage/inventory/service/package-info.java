/** Service plans in the database. */
@NullMarked
package dayglass.storage.inventory.service;

import org.jspecify.annotations.NullMarked;
