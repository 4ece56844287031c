package dayglass.storage.books;

import static dayglass.storage.schema.Tables.PERIOD_ACT;

import dayglass.base.Outcome;
import dayglass.books.period.Head;
import dayglass.books.period.Period;
import dayglass.books.period.PeriodAct;
import dayglass.books.period.PeriodActs;
import dayglass.house.Person;
import dayglass.job.Job;
import dayglass.storage.Database;
import dayglass.storage.schema.tables.records.PeriodActRecord;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Closes and reopenings as rows, which triggers keep as they are. */
public final class JooqPeriodActs implements PeriodActs {
    private final Database database;

    public JooqPeriodActs(Database database) {
        this.database = database;
    }

    @Override
    public Outcome<PeriodAct.Kept> add(PeriodAct act) {
        return database.writing(sql -> {
            PeriodActRecord row = sql.newRecord(PERIOD_ACT);
            row.setJobId(act.job().number());
            row.setDeed(act.deed().word());
            row.setFirstDay(act.period().firstDay().toString());
            row.setLastDay(act.period().lastDay().toString());
            row.setClosedThrough(act.closedThrough().map(LocalDate::toString).orElse(""));
            row.setHeadEntryId(act.head().entry());
            row.setHeadHash(act.head().hash());
            row.setReason(act.reason());
            row.setPersonId(database.recording().who().number());
            row.setMadeAt(database.recording().when().getEpochSecond());
            row.store();
            return Outcome.done(kept(row));
        });
    }

    @Override
    public List<PeriodAct.Kept> of(Job.Id job) {
        return database.reading(sql -> sql.selectFrom(PERIOD_ACT)
                .where(PERIOD_ACT.JOB_ID.eq(job.number()))
                .orderBy(PERIOD_ACT.ID)
                .fetch(JooqPeriodActs::kept));
    }

    private static PeriodAct.Kept kept(PeriodActRecord row) {
        return new PeriodAct.Kept(
                new PeriodAct.Id(row.getId()),
                new PeriodAct(
                        new Job.Id(row.getJobId()),
                        row.getDeed().equals(PeriodAct.Deed.CLOSED.word())
                                ? PeriodAct.Deed.CLOSED
                                : PeriodAct.Deed.REOPENED,
                        Period.of(LocalDate.parse(row.getFirstDay()), LocalDate.parse(row.getLastDay())),
                        Optional.of(row.getClosedThrough())
                                .filter(day -> !day.isEmpty())
                                .map(LocalDate::parse),
                        new Head(row.getHeadEntryId(), row.getHeadHash()),
                        row.getReason()),
                new Person.Id(row.getPersonId()),
                Instant.ofEpochSecond(row.getMadeAt()));
    }
}
