package dayglass.web.page.job;

import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.planning.KeptCosting;
import dayglass.web.page.picture.Strip;
import dayglass.web.page.picture.Words;
import java.util.List;
import java.util.Optional;

/** A job in the list of jobs. */
public record JobCard(
        long id,
        long version,
        String name,
        String dates,
        String uses,
        List<Strip.Run> strip,
        String total,
        String proof,
        long costing) {

    public JobCard {
        strip = List.copyOf(strip);
    }

    static JobCard of(Stored<Job.Id, Job> job, Optional<Stored<KeptCosting.Id, KeptCosting>> latest) {
        Job facts = job.facts();
        return new JobCard(
                job.id().number(),
                job.version(),
                facts.name(),
                Words.dates(facts.schedule().horizon()),
                Strip.uses(facts.schedule()),
                Strip.runs(facts.schedule()),
                latest.map(each -> Words.money(each.facts().summary().total())).orElse(""),
                latest.map(each -> proof(each.facts().summary())).orElse("not costed yet"),
                latest.map(each -> each.id().number()).orElse(0L));
    }

    static String proof(KeptCosting.Summary summary) {
        return summary.optimal() ? "proved the least" : "best found, not proved";
    }
}
