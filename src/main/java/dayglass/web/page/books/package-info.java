/** The books as pages: the cost report, entries, periods, and invoices laid beside what was ordered. */
@NullMarked
package dayglass.web.page.books;

import org.jspecify.annotations.NullMarked;
