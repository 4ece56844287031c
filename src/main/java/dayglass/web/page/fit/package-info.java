/** Does the lens give the picture on the camera: the question as a form, the answer as pictures and words. */
@NullMarked
package dayglass.web.page.fit;

import org.jspecify.annotations.NullMarked;
