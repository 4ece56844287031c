/**
 * What the program shows over HTTP: the interface for programs, the pages for people and the errors of both.
 *
 * <p>Knows the features and their ports, never the storage.
 */
@NullMarked
package dayglass.web;

import org.jspecify.annotations.NullMarked;
