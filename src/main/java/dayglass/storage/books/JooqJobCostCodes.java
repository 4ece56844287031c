package dayglass.storage.books;

import static dayglass.storage.schema.Tables.COST_CODES;
import static dayglass.storage.schema.Tables.JOB;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.CostCodes;
import dayglass.books.JobCodes;
import dayglass.books.JobCostCodes;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.CostCodesRecord;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** A row a job, its codes as JSON. */
public final class JooqJobCostCodes extends VersionedTable<Job.Id, JobCodes, CostCodesRecord> implements JobCostCodes {
    public JooqJobCostCodes(Database database) {
        super(database, new Shape<>("set of cost codes", COST_CODES.JOB_ID, COST_CODES.VERSION, Job.Id::new));
    }

    @Override
    public Stored<Job.Id, JobCodes> of(Job.Id job) {
        return find(job).orElseGet(() -> new Stored<>(job, 0, new JobCodes(job, CostCodes.NONE)));
    }

    @Override
    public Outcome<Stored<Job.Id, JobCodes>> keep(Stored<Job.Id, JobCodes> codes) {
        return addOrChange(codes);
    }

    @Override
    protected void fill(CostCodesRecord row, JobCodes facts) {
        row.setJobId(facts.job().number());
        row.setCodesJson(FactsJson.words(facts.codes().byOption()));
    }

    @Override
    protected JobCodes facts(DSLContext sql, CostCodesRecord row) {
        return new JobCodes(new Job.Id(row.getJobId()), new CostCodes(FactsJson.words(row.getCodesJson())));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Job.Id> self, JobCodes facts) {
        return sql.fetchExists(JOB, JOB.ID.eq(facts.job().number()))
                ? Optional.empty()
                : Optional.of(new Problem(
                        Problem.Code.NOT_FOUND,
                        "There is no job with the id " + facts.job().number() + "."));
    }

    /** They go with their job. */
    @Override
    protected List<String> uses(DSLContext sql, Job.Id id) {
        return List.of();
    }
}
