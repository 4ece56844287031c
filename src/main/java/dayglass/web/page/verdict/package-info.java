/** The page of the verdict: its form, its pictures and its lines. Nothing is kept; the address holds all of it. */
@NullMarked
package dayglass.web.page.verdict;

import org.jspecify.annotations.NullMarked;
