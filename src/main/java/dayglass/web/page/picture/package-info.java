/**
 * The pictures of a costing as plain geometry: what serves each slot by day, how the ways compare, what falls due when.
 *
 * <p>A picture knows a question and its answer and says where each shape lies and which words stand on it; drawing it
 * as SVG is the template's business, its colours and textures the style sheet's.
 */
@NullMarked
package dayglass.web.page.picture;

import org.jspecify.annotations.NullMarked;
