/** REST resources of {@link dayglass.books}: the cost codes of a job. */
@NullMarked
package dayglass.web.api.books;

import org.jspecify.annotations.NullMarked;
