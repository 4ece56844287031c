package dayglass.web.page.job;

import dayglass.base.Stored;
import dayglass.planning.KeptCosting;
import dayglass.web.page.picture.Words;
import java.util.List;

/**
 * The total of a job now, beside the one before.
 *
 * @param now the latest total; empty where it was never costed
 * @param before the total of the costing before that; empty where there is none
 * @param difference between the two in words
 * @param stale the job was changed since the latest costing
 */
public record Totals(
        String now, String proof, long costing, String before, long beforeCosting, String difference, boolean stale) {

    /** @param latest the costings of a job of which the last two count */
    static Totals of(List<Stored<KeptCosting.Id, KeptCosting.Summary>> latest, boolean stale) {
        if (latest.isEmpty()) {
            return new Totals("", "", 0, "", 0, "", false);
        }
        Stored<KeptCosting.Id, KeptCosting.Summary> now = latest.get(latest.size() - 1);
        String total = Words.money(now.facts().total());
        String proof = JobCard.proof(now.facts());
        if (latest.size() == 1) {
            return new Totals(total, proof, now.id().number(), "", 0, "", stale);
        }
        Stored<KeptCosting.Id, KeptCosting.Summary> before = latest.get(latest.size() - 2);
        boolean comparable =
                before.facts().total().currency().equals(now.facts().total().currency());
        return new Totals(
                total,
                proof,
                now.id().number(),
                Words.money(before.facts().total()),
                before.id().number(),
                comparable
                        ? Words.difference(before.facts().total(), now.facts().total())
                        : "in another currency",
                stale);
    }
}
