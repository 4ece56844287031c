package dayglass.storage.inventory;

import static dayglass.storage.schema.Tables.JOB_LENS_SET;
import static dayglass.storage.schema.Tables.LENS_SET;
import static dayglass.storage.schema.Tables.SET_MEMBERSHIP;
import static dayglass.storage.schema.Tables.UNIT;

import dayglass.base.Fault;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.inventory.LensSet;
import dayglass.inventory.LensSets;
import dayglass.inventory.Unit;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.catalogue.LettingCards;
import dayglass.storage.schema.tables.records.LensSetRecord;
import dayglass.storage.schema.tables.records.SetMembershipRecord;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Record2;
import org.jooq.Select;
import org.jooq.impl.DSL;

/** Sets as rows; who is in them since when, and who was, lies in a table of its own. */
public final class JooqLensSets extends VersionedTable<LensSet.Id, LensSet, LensSetRecord> implements LensSets {
    private final Clock clock;

    /** @param clock says when a unit is put in or taken out */
    public JooqLensSets(Database database, Clock clock) {
        super(database, new Shape<>("set", LENS_SET.ID, LENS_SET.VERSION, LensSet.Id::new));
        this.clock = clock;
    }

    @Override
    public Optional<Stored<LensSet.Id, LensSet>> named(String name) {
        return database.reading(
                sql -> sql.selectFrom(LENS_SET).where(LENS_SET.NAME.eq(name)).fetchOptional(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<LensSet.Id, LensSet>> matching(List<String> words, int most) {
        Condition filled = DSL.exists(DSL.selectOne()
                .from(SET_MEMBERSHIP)
                .where(SET_MEMBERSHIP.LENS_SET_ID.eq(LENS_SET.ID), SET_MEMBERSHIP.LEFT_AT.isNull()));
        return database.reading(sql -> sql.selectFrom(LENS_SET)
                .where(filled)
                .and(DSL.and(
                        words.stream().map(LENS_SET.NAME::containsIgnoreCase).toList()))
                .orderBy(LENS_SET.NAME)
                .limit(most)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    public Optional<Stored<LensSet.Id, LensSet>> holding(Unit.Id unit) {
        return database.reading(sql -> sql.select(LENS_SET.fields())
                .from(LENS_SET.join(SET_MEMBERSHIP).on(SET_MEMBERSHIP.LENS_SET_ID.eq(LENS_SET.ID)))
                .where(SET_MEMBERSHIP.UNIT_ID.eq(unit.number()), SET_MEMBERSHIP.LEFT_AT.isNull())
                .fetchOptionalInto(LENS_SET)
                .map(row -> stored(sql, row)));
    }

    @Override
    public List<Stored<LensSet.Id, LensSet>> with(Set<LensModel.Id> models, Set<Unit.Id> units) {
        Condition wanted = UNIT.LENS_MODEL_ID
                .in(models.stream().map(LensModel.Id::number).toList())
                .or(UNIT.ID.in(units.stream().map(Unit.Id::number).toList()));
        Select<Record1<Long>> sets = DSL.select(SET_MEMBERSHIP.LENS_SET_ID)
                .from(SET_MEMBERSHIP.join(UNIT).on(UNIT.ID.eq(SET_MEMBERSHIP.UNIT_ID)))
                .where(SET_MEMBERSHIP.LEFT_AT.isNull(), wanted);
        return database.reading(sql -> {
            Map<Long, List<Unit.Id>> members = sql.select(SET_MEMBERSHIP.LENS_SET_ID, SET_MEMBERSHIP.UNIT_ID)
                    .from(SET_MEMBERSHIP)
                    .where(SET_MEMBERSHIP.LEFT_AT.isNull(), SET_MEMBERSHIP.LENS_SET_ID.in(sets))
                    .orderBy(SET_MEMBERSHIP.LENS_SET_ID, SET_MEMBERSHIP.PLACE)
                    .fetchGroups(Record2::value1, row -> new Unit.Id(row.value2()));
            return sql.selectFrom(LENS_SET)
                    .where(LENS_SET.ID.in(members.keySet()))
                    .orderBy(LENS_SET.ID)
                    .fetch(row -> new Stored<>(
                            new LensSet.Id(row.getId()),
                            row.getVersion(),
                            facts(row, members.getOrDefault(row.getId(), List.of()))));
        });
    }

    @Override
    public List<LensSet.Membership> history(LensSet.Id set) {
        return database.reading(sql -> sql.selectFrom(SET_MEMBERSHIP)
                .where(SET_MEMBERSHIP.LENS_SET_ID.eq(set.number()))
                .orderBy(SET_MEMBERSHIP.JOINED_AT, SET_MEMBERSHIP.ID)
                .fetch(JooqLensSets::membership));
    }

    @Override
    public List<Joined> historyOf(Unit.Id unit) {
        return database.reading(sql -> sql.select(SET_MEMBERSHIP.fields())
                .select(LENS_SET.NAME)
                .from(SET_MEMBERSHIP.join(LENS_SET).on(LENS_SET.ID.eq(SET_MEMBERSHIP.LENS_SET_ID)))
                .where(SET_MEMBERSHIP.UNIT_ID.eq(unit.number()))
                .orderBy(SET_MEMBERSHIP.JOINED_AT, SET_MEMBERSHIP.ID)
                .fetch(row -> new Joined(row.get(LENS_SET.NAME), membership(row.into(SET_MEMBERSHIP)))));
    }

    private static LensSet.Membership membership(SetMembershipRecord row) {
        return new LensSet.Membership(
                new Unit.Id(row.getUnitId()),
                Instant.ofEpochSecond(row.getJoinedAt()),
                Optional.ofNullable(row.getLeftAt()).map(Instant::ofEpochSecond));
    }

    @Override
    protected void fill(LensSetRecord row, LensSet facts) {
        row.setName(facts.name());
        row.setIsMatched(facts.matched() ? 1 : 0);
        row.setFactsJson(FactsJson.ownCovers(facts));
    }

    @Override
    protected LensSet facts(DSLContext sql, LensSetRecord row) {
        return facts(
                row,
                now(sql, row.getId()).stream()
                        .map(member -> new Unit.Id(member.getUnitId()))
                        .toList());
    }

    private static LensSet facts(LensSetRecord row, List<Unit.Id> members) {
        return new LensSet(row.getName(), row.getIsMatched() == 1, members, FactsJson.ownCovers(row.getFactsJson()));
    }

    private static List<SetMembershipRecord> now(DSLContext sql, long set) {
        return sql.selectFrom(SET_MEMBERSHIP)
                .where(SET_MEMBERSHIP.LENS_SET_ID.eq(set), SET_MEMBERSHIP.LEFT_AT.isNull())
                .orderBy(SET_MEMBERSHIP.PLACE)
                .fetch();
    }

    /** Who stays keeps the moment of joining, whatever the new place. */
    @Override
    protected void linked(DSLContext sql, LensSet.Id id, LensSet facts) {
        long moment = clock.instant().getEpochSecond();
        Map<Long, SetMembershipRecord> before = new LinkedHashMap<>();
        now(sql, id.number()).forEach(member -> before.put(member.getUnitId(), member));
        for (int place = 0; place < facts.members().size(); place++) {
            long unit = facts.members().get(place).number();
            SetMembershipRecord staying = before.remove(unit);
            SetMembershipRecord member = staying == null ? sql.newRecord(SET_MEMBERSHIP) : staying;
            if (staying == null) {
                member.setLensSetId(id.number());
                member.setUnitId(unit);
                member.setJoinedAt(moment);
            }
            member.setPlace(place);
            member.store();
        }
        for (SetMembershipRecord leaving : before.values()) {
            // A clock that was set back must not make a unit leave before it came.
            leaving.setLeftAt(Math.max(moment, leaving.getJoinedAt()));
            leaving.store();
        }
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<LensSet.Id> self, LensSet facts) {
        return named(facts.name())
                .filter(other -> !self.equals(Optional.of(other.id())))
                .map(other -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Set " + other.id().number() + " already has the name " + facts.name() + "."))
                .or(() -> missing(sql, "/members", "unit", UNIT.ID, facts.members()))
                .or(() -> elsewhere(self, facts));
    }

    private Optional<Problem> elsewhere(Optional<LensSet.Id> self, LensSet facts) {
        List<Fault> faults = new ArrayList<>();
        for (int at = 0; at < facts.members().size(); at++) {
            String pointer = "/members/" + at;
            holding(facts.members().get(at))
                    .filter(other -> !self.equals(Optional.of(other.id())))
                    .ifPresent(other -> faults.add(new Fault(
                            pointer,
                            "is in the set " + other.facts().name()
                                    + " already, and a unit is in one set at most: take it out there first")));
        }
        return faults.isEmpty() ? Optional.empty() : Optional.of(Problem.faulty(faults));
    }

    @Override
    protected List<String> uses(DSLContext sql, LensSet.Id id) {
        List<String> uses = new ArrayList<>(named(
                "job",
                sql.select(JOB_LENS_SET.JOB_ID).from(JOB_LENS_SET).where(JOB_LENS_SET.LENS_SET_ID.eq(id.number()))));
        uses.addAll(named("rate card", LettingCards.of(sql, new Lets(Lets.Kind.SET, id.number()))));
        if (sql.fetchExists(SET_MEMBERSHIP, SET_MEMBERSHIP.LENS_SET_ID.eq(id.number()))) {
            uses.add("its history of members, which is kept for good");
        }
        return uses;
    }
}
