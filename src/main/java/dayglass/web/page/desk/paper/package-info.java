/**
 * The desk's papers as PDF, all of one look: quote, packing list, handover and return sheets, invoice. What they say comes
 * from {@code desk.paper} and the promise; nothing is worked out here but how it is written.
 */
@NullMarked
package dayglass.web.page.desk.paper;

import org.jspecify.annotations.NullMarked;
