/** REST resources of {@link dayglass.books}: cost codes, entries, charts, periods, orders, invoices, reports and exports. */
@NullMarked
package dayglass.web.api.books;

import org.jspecify.annotations.NullMarked;
