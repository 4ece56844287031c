/**
 * The pages for people: routes, reading of forms, and what each page shows.
 *
 * <p>A page is a record made from the domain's own objects and rendered by a template of the same name; templates
 * compute nothing. What changes something is a form, so that it works in every browser.
 */
@NullMarked
package dayglass.web.page;

import org.jspecify.annotations.NullMarked;
