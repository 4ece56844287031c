/**
 * Lists that a production hands on: what its hires cost, and what its insurer has to know. They say what the books and the
 * shelf say, and nothing that neither knows.
 */
@NullMarked
package dayglass.books.list;

import org.jspecify.annotations.NullMarked;
