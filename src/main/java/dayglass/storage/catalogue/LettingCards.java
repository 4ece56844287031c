package dayglass.storage.catalogue;

import static dayglass.storage.schema.Tables.RATE_CARD;

import dayglass.catalogue.Lets;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.impl.DSL;

/** Rate cards by what their rates are for, which stands in JSON and not in a column. */
public final class LettingCards {
    private LettingCards() {}

    /** The ids of the cards that have a rate for this model, set or unit. */
    public static Select<Record1<Long>> of(DSLContext sql, Lets lets) {
        return sql.select(RATE_CARD.ID)
                .from(RATE_CARD)
                .where(DSL.condition(
                        "EXISTS (SELECT 1 FROM json_each({0}) WHERE json_extract(value, {1}) = {2})",
                        RATE_CARD.RATES_JSON, DSL.inline("$.lets." + lets.kind().word()), DSL.inline(lets.number())))
                .orderBy(RATE_CARD.ID);
    }
}
