/** Pages of the house: its settings, its people, who one is, and who changed what. */
@NullMarked
package dayglass.web.page.house;

import org.jspecify.annotations.NullMarked;
