package dayglass.architecture.broken.books;

import dayglass.architecture.broken.web.Page;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class SeesWeb {
    Page seen = new Page();
}
