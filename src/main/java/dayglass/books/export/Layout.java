package dayglass.books.export;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How a user wants an export written.
 *
 * @param name unique
 * @param columns in their order, one at least, each under a heading of its own
 * @param codes how a cost code is written; one that is not named stays as it is
 */
public record Layout(String name, List<Column> columns, Map<String, String> codes) {
    public Layout {
        columns = List.copyOf(columns);
        codes = Map.copyOf(codes);
        Set<String> headings = new HashSet<>();
        if (columns.isEmpty() || !columns.stream().map(Column::heading).allMatch(headings::add)) {
            throw new IllegalArgumentException("a layout has columns, and each a heading of its own");
        }
    }

    /** The number of a layout. */
    public record Id(long number) implements dayglass.base.Id {}

    /**
     * One column.
     *
     * @param column its name in an export without a layout
     * @param heading the user's own
     */
    public record Column(String column, String heading) {}

    String written(String code) {
        return codes.getOrDefault(code, code);
    }
}
