package dayglass.base;

/**
 * Something kept, with its identity.
 *
 * @param version counts the changes from 1; a change names the version it was based on
 * @param facts what is known of it
 */
public record Stored<I extends Id, T>(I id, long version, T facts) {}
