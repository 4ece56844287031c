package dayglass.desk.rental;

import dayglass.job.Job;
import java.util.Map;

/** Which lines of a rental stand in a job's books as commitments. */
public interface OrdersInBooks {
    /**
     * A commitment that was not reversed.
     *
     * @param entry its number
     */
    record InBooks(Job.Id job, long entry) {
        /** Why what it is for must stay as it is. */
        public String why() {
            return "The order stands in the books of job " + job.number() + " as entry " + entry
                    + ": reverse that entry first.";
        }
    }

    /** By line, from 0. */
    Map<Integer, InBooks> of(Rental.Id rental);
}
