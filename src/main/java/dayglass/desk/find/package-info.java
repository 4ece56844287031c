/** Finds on the shelf what a caller names by a few letters, a tag, a serial or a focal length. */
@NullMarked
package dayglass.desk.find;

import org.jspecify.annotations.NullMarked;
