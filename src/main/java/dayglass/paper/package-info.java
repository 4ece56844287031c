/**
 * Pages as PDF: takes a well-formed page and prints it with embedded fonts. The only place that knows the format's
 * library.
 *
 * <p>Nothing is fetched while it prints, neither from the network nor from a folder. No clock or chance is looked at, so
 * the same page gives the same bytes.
 */
@NullMarked
package dayglass.paper;

import org.jspecify.annotations.NullMarked;
