/**
 * Reading and writing JSON: a small tree of values, readers that collect every fault with its JSON Pointer, and text.
 *
 * <p>Knows plain values only; what a costing looks like on the wire lies in {@code dayglass.wire.costing}. Other
 * resources build their own readers from {@link dayglass.wire.Fields} and {@link dayglass.wire.Readers}. No web, no
 * database.
 */
@NullMarked
package dayglass.wire;

import org.jspecify.annotations.NullMarked;
