/**
 * The checks of a lens on a camera, one class each. Each tells a verdict with the reason, or nothing where what it
 * needs was not given.
 */
@NullMarked
package dayglass.optics.check;

import org.jspecify.annotations.NullMarked;
