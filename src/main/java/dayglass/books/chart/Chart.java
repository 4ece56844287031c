package dayglass.books.chart;

import dayglass.job.Job;
import java.util.List;

/**
 * The cost codes that a job's entries may bear; an empty chart lets them bear any.
 *
 * @param codes in the chart's own order, none twice
 */
public record Chart(Job.Id job, List<CostCode> codes) {
    public Chart {
        codes = List.copyOf(codes);
    }

    /** A code and what it is called; the name may be empty. */
    public record CostCode(String code, String name) {}

    public boolean allows(String code) {
        return codes.isEmpty() || codes.stream().anyMatch(each -> each.code().equals(code));
    }

    /** The name of a code; empty where it has none. */
    public String nameOf(String code) {
        return codes.stream()
                .filter(each -> each.code().equals(code))
                .map(CostCode::name)
                .findFirst()
                .orElse("");
    }
}
