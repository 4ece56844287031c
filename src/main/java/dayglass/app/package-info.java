/**
 * The program as it is started: the commands, one class each, and what they print for people.
 *
 * <p>A command names no web or database class in its fields and signatures and touches them only once it runs, so that
 * {@code cost} starts without either.
 */
@NullMarked
package dayglass.app;

import org.jspecify.annotations.NullMarked;
