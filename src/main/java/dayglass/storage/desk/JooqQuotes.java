package dayglass.storage.desk;

import static dayglass.storage.schema.Tables.QUOTE;

import dayglass.base.Problem;
import dayglass.desk.quote.Quote;
import dayglass.desk.quote.Quotes;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.QuoteRecord;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Quotes as rows, with all their revisions as JSON. */
public final class JooqQuotes extends VersionedTable<Quote.Id, Quote, QuoteRecord> implements Quotes {
    public JooqQuotes(Database database) {
        super(database, new Shape<>("quote", QUOTE.ID, QUOTE.VERSION, Quote.Id::new));
    }

    @Override
    public long nextNumber() {
        return database.reading(sql -> sql.select(DSL.coalesce(DSL.max(QUOTE.NUMBER), 0))
                        .from(QUOTE)
                        .fetchSingle()
                        .value1())
                + 1L;
    }

    @Override
    protected void fill(QuoteRecord row, Quote facts) {
        row.setNumber(Math.toIntExact(facts.number()));
        row.setCustomer(facts.customer().name());
        row.setDecision(facts.decision().word());
        row.setValidUntil(facts.now().validUntil().toString());
        row.setQuoteJson(FactsJson.quote(facts));
    }

    @Override
    protected Quote facts(DSLContext sql, QuoteRecord row) {
        return FactsJson.quote(row.getQuoteJson());
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Quote.Id> self, Quote facts) {
        return Optional.empty();
    }

    /** The row itself is never removed. */
    @Override
    protected List<String> uses(DSLContext sql, Quote.Id id) {
        return List.of("the house, which keeps every quote");
    }
}
