/**
 * One purchase over its term: what it costs at present value, its cash flow by month, its loan, its rate of return, and
 * how it is written off. Renting instead is none of its business.
 */
@NullMarked
package dayglass.cost.ownership;

import org.jspecify.annotations.NullMarked;
