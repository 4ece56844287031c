package dayglass.shelf.table;

import dayglass.base.Fault;
import dayglass.base.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What bringing in a table would do, or did.
 *
 * @param preview true where nothing was stored
 * @param unchanged how many rows say what is there already
 * @param faulty what is wrong and where; such rows are never stored
 * @param done how many rows were stored
 */
public record ImportReport(
        boolean preview,
        char separator,
        List<Column> columns,
        List<Added> added,
        List<Changed> changed,
        int unchanged,
        List<Bad> faulty,
        Done done) {
    public ImportReport {
        columns = List.copyOf(columns);
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        faulty = List.copyOf(faulty);
    }

    /**
     * A column of the table.
     *
     * @param number from 1
     * @param field what it is taken for; empty where it is not taken
     */
    public record Column(int number, String heading, Optional<String> field) {}

    public record Added(long line, String name) {}

    public record Changed(long line, String name, List<Difference> fields) {
        public Changed {
            fields = List.copyOf(fields);
        }
    }

    public record Difference(String field, String before, String after) {}

    /**
     * Something wrong.
     *
     * @param column from 1; 0 where it is the whole row
     * @param heading of the column; the field's name where the table has no such column
     */
    public record Bad(long line, int column, String heading, String message) {
        private Fault atText() {
            String named = heading.isBlank() ? "" : " (" + heading + ")";
            String place = "line " + line + (column > 0 ? ", column " + column : "") + named;
            return new Fault("/text", place + ": " + message);
        }
    }

    /** Why a table that is taken whole or not at all is not taken: each fault by its line and column. */
    static Problem refusal(List<Bad> faulty) {
        return Problem.faulty(faulty.stream().map(Bad::atText).toList());
    }

    public record Done(int added, int changed) {}
}
