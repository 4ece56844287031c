/**
 * The way into the program: its commands, its settings and how its rooms are wired together. Nothing else sees it.
 */
@NullMarked
package dayglass.app;

import org.jspecify.annotations.NullMarked;
