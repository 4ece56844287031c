package dayglass.base;

/**
 * One thing wrong with an input, and where.
 *
 * @param pointer the JSON Pointer (RFC 6901) of the value at fault; empty for the whole text
 * @param message what is wrong and how to mend it, one sentence for people
 */
public record Fault(String pointer, String message) {}
