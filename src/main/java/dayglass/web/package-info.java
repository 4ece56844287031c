/**
 * The program over HTTP: the server and what guards its door. Below it, {@code api} answers in JSON, {@code page} in
 * HTML, and {@code error} turns refusals into answers.
 *
 * <p>Never sees {@code storage}: it speaks to the features' collections and use cases.
 */
@NullMarked
package dayglass.web;

import org.jspecify.annotations.NullMarked;
