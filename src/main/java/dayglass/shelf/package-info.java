/**
 * The shelf's records as JSON: lens models, units and sets, written alike in REST, in the database, in forms and in
 * tables that come in and go out. A job's brief and ways, which speak of them, are written here too,
 * and the books' layouts and gear.
 *
 * <p>What a record means belongs in {@code catalogue} and {@code inventory}; requests and rows belong in {@code web}
 * and {@code storage}.
 */
@NullMarked
package dayglass.shelf;

import org.jspecify.annotations.NullMarked;
