/** Verdicts that are being weighed, for REST and pages alike: how far each is, and a way to stop it. */
@NullMarked
package dayglass.web.weighing;

import org.jspecify.annotations.NullMarked;
