/**
 * What is done to the books: entries posted and reversed, plans accepted, invoices matched and paid, periods closed. Each
 * act posts its entries together or is refused.
 */
@NullMarked
package dayglass.books.post;

import org.jspecify.annotations.NullMarked;
