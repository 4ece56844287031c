/**
 * The desk: prices what a caller asks for, promises it, lets it out and bills it. {@code words} reads what is typed,
 * {@code price} prices a package, {@code quote} promises, {@code rental} is what follows a promise that was taken up.
 */
@NullMarked
package dayglass.desk;

import org.jspecify.annotations.NullMarked;
