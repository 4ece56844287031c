/**
 * What the interface and the pages read from requests alike: the numbers in addresses, and text that must be UTF-8. What
 * only one of them reads stays with it.
 */
@NullMarked
package dayglass.web.request;

import org.jspecify.annotations.NullMarked;
