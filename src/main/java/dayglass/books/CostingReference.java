package dayglass.books;

import java.time.Instant;

/**
 * Which stored costing the lines come from. It never changes, so neither do they.
 *
 * @param id of the costing
 * @param createdAt when it was computed; files bear it as their date, so that writing one twice gives the same bytes
 * @param requestSha256 of the stored request, in hexadecimal
 * @param answerSha256 of the stored answer, in hexadecimal
 */
public record CostingReference(String id, Instant createdAt, String requestSha256, String answerSha256) {}
