/** Verdicts over REST: what is asked is weighed and answered; nothing is kept. */
@NullMarked
package dayglass.web.api.verdict;

import org.jspecify.annotations.NullMarked;
