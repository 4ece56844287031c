/** Quotes: priced packages that stand until a day, numbered without gaps, their revisions kept. */
@NullMarked
package dayglass.desk.quote;

import org.jspecify.annotations.NullMarked;
