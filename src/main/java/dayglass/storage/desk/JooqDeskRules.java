package dayglass.storage.desk;

import static dayglass.storage.schema.Tables.DESK_RULES;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.desk.DeskRules;
import dayglass.desk.KeptRules;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.DeskRulesRecord;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** One row, once a house set rules of its own. */
public final class JooqDeskRules extends VersionedTable<DeskRules.Id, DeskRules, DeskRulesRecord> implements KeptRules {
    public JooqDeskRules(Database database) {
        super(database, new Shape<>("set of desk rules", DESK_RULES.ID, DESK_RULES.VERSION, DeskRules.Id::new));
    }

    @Override
    public Stored<DeskRules.Id, DeskRules> now() {
        return find(DeskRules.Id.ONLY).orElseGet(() -> new Stored<>(DeskRules.Id.ONLY, 0, DeskRules.USUAL));
    }

    @Override
    public Outcome<Stored<DeskRules.Id, DeskRules>> keep(Stored<DeskRules.Id, DeskRules> rules) {
        return addOrChange(rules);
    }

    @Override
    protected void fill(DeskRulesRecord row, DeskRules facts) {
        row.setId(DeskRules.Id.ONLY.number());
        row.setRulesJson(FactsJson.deskRules(facts));
    }

    @Override
    protected DeskRules facts(DSLContext sql, DeskRulesRecord row) {
        return FactsJson.deskRules(row.getRulesJson());
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<DeskRules.Id> self, DeskRules facts) {
        return Optional.empty();
    }

    @Override
    protected List<String> uses(DSLContext sql, DeskRules.Id id) {
        return List.of();
    }
}
