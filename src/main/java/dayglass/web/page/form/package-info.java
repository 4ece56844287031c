/**
 * Forms as the contract's JSON: each field is named by the JSON Pointer of the value it holds, so that the readers of
 * the wire format check what was typed and their faults find the field they belong to.
 */
@NullMarked
package dayglass.web.page.form;

import org.jspecify.annotations.NullMarked;
