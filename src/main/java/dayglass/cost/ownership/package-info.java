/**
 * What one purchase costs over its term: outlay, holding and service less letting and resale, at present value.
 */
@NullMarked
package dayglass.cost.ownership;

import org.jspecify.annotations.NullMarked;
