package dayglass.desk.quote;

/**
 * Who asks.
 *
 * @param name a person or a company, as the papers name it
 * @param contact how to reach them, and where the papers go; may be empty
 * @param production for what; may be empty
 */
public record Customer(String name, String contact, String production) {}
