package dayglass.storage.job;

import static dayglass.storage.schema.Tables.JOB;
import static dayglass.storage.schema.Tables.LENS_MODEL;
import static dayglass.storage.schema.Tables.LENS_SET;
import static dayglass.storage.schema.Tables.PURCHASE_OFFER;
import static dayglass.storage.schema.Tables.RATE_CARD;
import static dayglass.storage.schema.Tables.UNIT;
import static dayglass.storage.schema.Tables.WAY;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.job.Ways;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.WayRecord;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/**
 * Ways as rows. What a way names must be there when it is written; it may go later, and the options sheet then says so.
 */
public final class JooqWays extends VersionedTable<Way.Id, Way, WayRecord> implements Ways {
    public JooqWays(Database database) {
        super(database, new Shape<>("way", WAY.ID, WAY.VERSION, Way.Id::new));
    }

    @Override
    public List<Stored<Way.Id, Way>> of(Job.Id job) {
        return database.reading(sql -> sql.selectFrom(WAY)
                .where(WAY.JOB_ID.eq(job.number()))
                .orderBy(WAY.ID)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    protected void fill(WayRecord row, Way facts) {
        row.setJobId(facts.job().number());
        row.setName(facts.name());
        row.setFactsJson(FactsJson.way(facts));
    }

    @Override
    protected Way facts(DSLContext sql, WayRecord row) {
        return FactsJson.way(row.getFactsJson(), new Job.Id(row.getJobId()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Way.Id> self, Way facts) {
        Optional<Problem> problem = missing(sql, "/jobId", "job", JOB.ID, facts.job());
        for (int at = 0; at < facts.pieces().size(); at++) {
            String pointer = "/pieces/" + at;
            Way.Piece piece = facts.pieces().get(at);
            problem = problem.or(() -> source(sql, pointer, piece.source())).or(() -> glass(sql, pointer, piece));
        }
        return problem.or(() -> taken(sql, self, facts));
    }

    private static Optional<Problem> source(DSLContext sql, String pointer, Way.Source source) {
        return source.fold(
                bought -> missing(sql, pointer + "/purchaseOffer", "purchase offer", PURCHASE_OFFER.ID, bought.offer()),
                rented -> missing(sql, pointer + "/rateCard", "rate card", RATE_CARD.ID, rented.card()),
                own -> missing(sql, pointer + "/unit", "unit", UNIT.ID, own.unit()),
                own -> missing(sql, pointer + "/lensSet", "set", LENS_SET.ID, own.set()));
    }

    private static Optional<Problem> glass(DSLContext sql, String pointer, Way.Piece piece) {
        Optional<Problem> problem = Optional.empty();
        for (int at = 0; at < piece.glass().size(); at++) {
            String place = pointer + "/glass/" + at;
            Way.Brought brought = piece.glass().get(at);
            problem = problem.or(() -> missing(sql, place + "/lensModel", "lens model", LENS_MODEL.ID, brought.lens()))
                    .or(() -> brought.front()
                            .flatMap(front -> missing(sql, place + "/attachment", "lens model", LENS_MODEL.ID, front)));
        }
        return problem;
    }

    private static Optional<Problem> taken(DSLContext sql, Optional<Way.Id> self, Way facts) {
        return sql.selectFrom(WAY)
                .where(
                        WAY.JOB_ID.eq(facts.job().number()),
                        WAY.NAME.eq(facts.name()),
                        WAY.ID.ne(self.map(Way.Id::number).orElse(0L)))
                .fetchOptional(row -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Way " + row.getId() + " of this job already has the name " + facts.name() + "."));
    }

    @Override
    protected List<String> uses(DSLContext sql, Way.Id id) {
        return List.of();
    }
}
