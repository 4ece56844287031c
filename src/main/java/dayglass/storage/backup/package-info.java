/** Copies of a database with its pictures. */
@NullMarked
package dayglass.storage.backup;

import org.jspecify.annotations.NullMarked;
