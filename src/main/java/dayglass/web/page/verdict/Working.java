package dayglass.web.page.verdict;

import java.util.List;

/**
 * How a figure comes about, as a table.
 *
 * @param heads of the columns; the first column names its row
 * @param addsUp the last row is the sum of those above, or what they come to
 */
public record Working(String heading, List<String> heads, List<List<String>> rows, boolean addsUp) {
    public Working {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    public boolean comesTo(int row) {
        return addsUp && row == rows.size() - 1;
    }
}
