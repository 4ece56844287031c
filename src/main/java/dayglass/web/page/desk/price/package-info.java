/** The desk with a caller on the phone: what is wanted is typed, what it costs stands beside it. */
@NullMarked
package dayglass.web.page.desk.price;

import org.jspecify.annotations.NullMarked;
