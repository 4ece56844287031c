package dayglass.web.page.desk.paper;

import java.util.List;

/**
 * The head of a paper, whose title is also at the foot of each page.
 *
 * @param title with its number: {@code Quote 12, revision 1}
 */
public record Heading(String title, String house, List<Fact> facts) {
    public Heading {
        facts = facts.stream().filter(fact -> !fact.value().isBlank()).toList();
    }

    /** What is said of the whole; one without a value is left out. */
    public record Fact(String name, String value) {}
}
