package dayglass.storage.job;

import static dayglass.storage.schema.Tables.BRIEF;
import static dayglass.storage.schema.Tables.JOB;
import static dayglass.storage.schema.Tables.MOUNT;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.job.Brief;
import dayglass.job.Briefs;
import dayglass.job.Job;
import dayglass.optics.Mounts;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.BriefRecord;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** A row a job that has a brief. */
public final class JooqBriefs extends VersionedTable<Job.Id, Brief, BriefRecord> implements Briefs {
    public JooqBriefs(Database database) {
        super(database, new Shape<>("brief", BRIEF.JOB_ID, BRIEF.VERSION, Job.Id::new));
    }

    @Override
    public Optional<Stored<Job.Id, Brief>> of(Job.Id job) {
        return find(job);
    }

    @Override
    public Outcome<Stored<Job.Id, Brief>> keep(Stored<Job.Id, Brief> brief) {
        return database.writing(
                sql -> brief.version() == 0 && find(brief.id()).isEmpty() ? add(brief.facts()) : change(brief));
    }

    @Override
    protected void fill(BriefRecord row, Brief facts) {
        row.setJobId(facts.job().number());
        row.setFactsJson(FactsJson.brief(facts));
    }

    @Override
    protected Brief facts(DSLContext sql, BriefRecord row) {
        return FactsJson.brief(row.getFactsJson(), new Job.Id(row.getJobId()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Job.Id> self, Brief facts) {
        String currency = sql.select(JOB.CURRENCY)
                .from(JOB)
                .where(JOB.ID.eq(facts.job().number()))
                .fetchOne(JOB.CURRENCY);
        if (currency == null) {
            return Optional.of(new Problem(
                    Problem.Code.NOT_FOUND,
                    "There is no job with the id " + facts.job().number() + "."));
        }
        String mount = facts.picture().camera().mount();
        if (Mounts.KNOWN.flangeMm(mount).isEmpty() && !sql.fetchExists(MOUNT, MOUNT.NAME.eq(mount))) {
            return fault(
                    "/picture/camera/mount",
                    "no mount of that name is known: use one of "
                            + String.join(", ", Mounts.KNOWN.byName().keySet()) + ", or add it to the mounts first");
        }
        return facts.budget()
                .filter(budget -> !budget.currency().code().equals(currency))
                .flatMap(budget -> fault("/budget/currency", "must be the job's, " + currency));
    }

    private static Optional<Problem> fault(String pointer, String message) {
        return Optional.of(Problem.faulty(pointer, message));
    }

    /** It goes with its job. */
    @Override
    protected List<String> uses(DSLContext sql, Job.Id id) {
        return List.of();
    }
}
