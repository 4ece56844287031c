/** The contract of the REST interface as it is served: the document itself, and a page made of it for reading. */
@NullMarked
package dayglass.web.reference;

import org.jspecify.annotations.NullMarked;
