/** What was promised and what is let: quotes, rentals and the rules of the desk, with their deeds as forms. */
@NullMarked
package dayglass.web.page.desk.rental;

import org.jspecify.annotations.NullMarked;
