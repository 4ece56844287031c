/** The demo's house: what stands in {@code demo-data} beside the job, brought in through the importers that users have. */
@NullMarked
package dayglass.app.demo;

import org.jspecify.annotations.NullMarked;
