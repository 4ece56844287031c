package dayglass.storage.planning;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.COSTING;
import static dayglass.storage.schema.Tables.JOB;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.planning.Costings;
import dayglass.planning.KeptCosting;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.CostingRecord;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.impl.DSL;

/** Costings as rows; a trigger of the table keeps them as they are. */
public final class JooqCostings implements Costings {
    private static final int ONLY_VERSION = 1;

    private final Database database;

    public JooqCostings(Database database) {
        this.database = database;
    }

    @Override
    public KeptCosting.Id add(KeptCosting costing) {
        Outcome<KeptCosting.Id> added = database.writing(sql -> {
            CostingRecord row = sql.newRecord(COSTING);
            KeptCosting.Summary summary = costing.summary();
            // The job may have been removed while it was being costed; its costing is then one of a bare request.
            row.setJobId(summary.job()
                    .map(Job.Id::number)
                    .filter(id -> sql.fetchExists(JOB, JOB.ID.eq(id)))
                    .orElse(null));
            row.setJobName(summary.jobName());
            row.setCreatedAt(summary.createdAt().toString());
            row.setEngineVersion(summary.engineVersion());
            row.setTimeLimitSeconds(summary.timeLimitSeconds().orElse(null));
            row.setCurrency(summary.total().currency().code());
            row.setTotal(summary.total().amount());
            row.setIsOptimal(summary.optimal() ? 1 : 0);
            row.setRequestJson(costing.request().json());
            row.setRequestSha256(costing.request().sha256());
            row.setAnswerJson(costing.answer().json());
            row.setAnswerSha256(costing.answer().sha256());
            row.store();
            return Outcome.done(new KeptCosting.Id(row.getId()));
        });
        return added.fold(id -> id, problem -> {
            throw new IllegalStateException(problem.detail());
        });
    }

    @Override
    public Optional<Stored<KeptCosting.Id, KeptCosting>> find(KeptCosting.Id id) {
        return database.reading(
                sql -> sql.selectFrom(COSTING).where(COSTING.ID.eq(id.number())).fetchOptional(JooqCostings::kept));
    }

    @Override
    public Optional<Stored<KeptCosting.Id, KeptCosting>> latestOf(Job.Id job) {
        return database.reading(sql -> sql.selectFrom(COSTING)
                .where(COSTING.JOB_ID.eq(job.number()))
                .orderBy(COSTING.ID.desc())
                .limit(1)
                .fetchOptional(JooqCostings::kept));
    }

    @Override
    public List<Stored<KeptCosting.Id, KeptCosting.Summary>> list(
            Optional<Job.Id> job, Optional<KeptCosting.Id> after, int most) {
        Condition ofJob = job.map(id -> COSTING.JOB_ID.eq(id.number())).orElse(DSL.noCondition());
        return database.reading(sql -> sql.select(
                        COSTING.ID,
                        COSTING.JOB_ID,
                        COSTING.JOB_NAME,
                        COSTING.CREATED_AT,
                        COSTING.ENGINE_VERSION,
                        COSTING.TIME_LIMIT_SECONDS,
                        COSTING.CURRENCY,
                        COSTING.TOTAL,
                        COSTING.IS_OPTIMAL)
                .from(COSTING)
                .where(ofJob, COSTING.ID.gt(after.map(KeptCosting.Id::number).orElse(0L)))
                .orderBy(COSTING.ID)
                .limit(most)
                .fetch(row -> new Stored<>(new KeptCosting.Id(row.get(COSTING.ID)), ONLY_VERSION, summary(row))));
    }

    @Override
    public Outcome<KeptCosting.Id> remove(KeptCosting.Id id) {
        return database.writing(sql -> {
            if (sql.fetchExists(BOOK_ENTRY, BOOK_ENTRY.COSTING_ID.eq(id.number()))) {
                return Outcome.refused(
                        Problem.Code.STILL_USED,
                        "The books hold entries that come from this costing, and it stays as the paper behind them.");
            }
            int removed =
                    sql.deleteFrom(COSTING).where(COSTING.ID.eq(id.number())).execute();
            return removed == 1
                    ? Outcome.done(id)
                    : Outcome.refused(Problem.Code.NOT_FOUND, "There is no costing with the id " + id.number() + ".");
        });
    }

    private static Stored<KeptCosting.Id, KeptCosting> kept(CostingRecord row) {
        return new Stored<>(
                new KeptCosting.Id(row.getId()),
                ONLY_VERSION,
                new KeptCosting(
                        summary(row),
                        new KeptCosting.Document(row.getRequestJson(), row.getRequestSha256()),
                        new KeptCosting.Document(row.getAnswerJson(), row.getAnswerSha256())));
    }

    private static KeptCosting.Summary summary(Record row) {
        Currency currency = Currency.of(row.get(COSTING.CURRENCY));
        return new KeptCosting.Summary(
                Optional.ofNullable(row.get(COSTING.JOB_ID)).map(Job.Id::new),
                row.get(COSTING.JOB_NAME),
                Instant.parse(row.get(COSTING.CREATED_AT)),
                row.get(COSTING.ENGINE_VERSION),
                Optional.ofNullable(row.get(COSTING.TIME_LIMIT_SECONDS)),
                Money.of(currency, new BigDecimal(row.get(COSTING.TOTAL))),
                row.get(COSTING.IS_OPTIMAL) == 1);
    }
}
