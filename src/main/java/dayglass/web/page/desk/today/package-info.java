/** The page of one day at the desk. */
@NullMarked
package dayglass.web.page.desk.today;

import org.jspecify.annotations.NullMarked;
