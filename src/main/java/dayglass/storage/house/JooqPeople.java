package dayglass.storage.house;

import static dayglass.storage.schema.Tables.BOOK_ENTRY;
import static dayglass.storage.schema.Tables.BOOK_PAYMENT;
import static dayglass.storage.schema.Tables.CHANGE;
import static dayglass.storage.schema.Tables.CONDITION_NOTE;
import static dayglass.storage.schema.Tables.HANDOVER_OVERRIDE;
import static dayglass.storage.schema.Tables.HOLD;
import static dayglass.storage.schema.Tables.OCCUPATION;
import static dayglass.storage.schema.Tables.PERIOD_ACT;
import static dayglass.storage.schema.Tables.PERSON;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.People;
import dayglass.house.Person;
import dayglass.house.Role;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.PersonRecord;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.TableField;

/** People as rows. Whoever stands behind a record is never removed, and the last one who is there never leaves. */
public final class JooqPeople extends VersionedTable<Person.Id, Person, PersonRecord> implements People {
    private static final List<TableField<?, Long>> NAMED_BY = List.of(
            CHANGE.PERSON_ID,
            CONDITION_NOTE.PERSON_ID,
            OCCUPATION.PERSON_ID,
            HOLD.PERSON_ID,
            HANDOVER_OVERRIDE.PERSON_ID,
            BOOK_ENTRY.PERSON_ID,
            PERIOD_ACT.PERSON_ID,
            BOOK_PAYMENT.PERSON_ID);

    public JooqPeople(Database database) {
        super(database, new Shape<>("person", PERSON.ID, PERSON.VERSION, Person.Id::new));
    }

    @Override
    protected void fill(PersonRecord row, Person facts) {
        row.setName(facts.name());
        row.setRole(facts.role().word());
        row.setIsGone(facts.gone() ? 1 : 0);
    }

    @Override
    protected Person facts(DSLContext sql, PersonRecord row) {
        return new Person(row.getName(), Role.of(row.getRole()).orElseThrow(), row.getIsGone() == 1);
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Person.Id> self, Person facts) {
        long own = self.map(Person.Id::number).orElse(0L);
        Optional<Problem> taken = sql.selectFrom(PERSON)
                .where(PERSON.NAME.eq(facts.name()), PERSON.ID.ne(own))
                .fetchOptional(other -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Person " + other.getId() + " already has the name " + facts.name() + "."));
        return taken.isPresent() || !facts.gone() || self.isEmpty() ? taken : lastOne(sql, own);
    }

    private static Optional<Problem> lastOne(DSLContext sql, long person) {
        return sql.fetchExists(PERSON, PERSON.IS_GONE.eq(0), PERSON.ID.ne(person))
                ? Optional.empty()
                : Optional.of(new Problem(
                        Problem.Code.CANNOT_BE_DONE,
                        "This is the last person who is there, and somebody must stand behind what is recorded: add"
                                + " another one first."));
    }

    @Override
    public Outcome<Person.Id> remove(Person.Id id, long version) {
        return database.writing(sql -> {
            boolean named =
                    NAMED_BY.stream().anyMatch(field -> sql.fetchExists(field.getTable(), field.eq(id.number())));
            if (named) {
                return Outcome.refused(
                        Problem.Code.STILL_USED,
                        "Records bear the name of this person and keep it: say that the person is gone instead.");
            }
            Optional<Problem> last = find(id).map(Stored::facts).flatMap(person -> lastOne(sql, id.number()));
            return last.isPresent() ? Outcome.refused(last.get()) : super.remove(id, version);
        });
    }

    @Override
    protected List<String> uses(DSLContext sql, Person.Id id) {
        return List.of();
    }
}
