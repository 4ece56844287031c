/**
 * What every resource of the REST interface has in common: bodies, addresses, versions, lists. One package a feature
 * below it says what its resources look like. The contract is {@code openapi/openapi.yaml}.
 */
@NullMarked
package dayglass.web.api;

import org.jspecify.annotations.NullMarked;
