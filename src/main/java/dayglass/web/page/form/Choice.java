package dayglass.web.page.form;

/** One entry of a list to choose from. */
public record Choice(String value, String label) {}
