/** Refusals and failures as problem documents (RFC 9457), with one table of their statuses. */
@NullMarked
package dayglass.web.error;

import org.jspecify.annotations.NullMarked;
