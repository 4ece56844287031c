package dayglass.planning.ways;

import dayglass.job.Brief;
import dayglass.job.Job;
import dayglass.planning.glass.Judging;
import dayglass.planning.glass.PieceCover;
import java.util.Map;

/**
 * What every row of a sheet starts from.
 *
 * @param others what the options that the job considers itself serve, by id: they may complete a way
 */
record SheetBasis(Job job, Judging judging, WayParts parts, Map<String, PieceCover> others) {
    Brief brief() {
        return judging.brief();
    }
}
