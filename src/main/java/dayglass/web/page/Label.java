package dayglass.web.page;

import java.util.List;

/** The label at the head of a page, like the one on a film can: a title and a few named facts. */
public record Label(String title, List<Field> fields) {
    public Label {
        fields = List.copyOf(fields);
    }

    public record Field(String name, String value) {}
}
