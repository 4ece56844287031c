/** Pages of one unit on the shelf: its notes and its condition now. */
@NullMarked
package dayglass.web.page.shelf;

import org.jspecify.annotations.NullMarked;
