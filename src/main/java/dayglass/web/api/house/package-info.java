/** REST resources of {@link dayglass.house}: its settings, people and changes; and who is behind a request. */
@NullMarked
package dayglass.web.api.house;

import org.jspecify.annotations.NullMarked;
