package dayglass.storage.catalogue;

import static dayglass.storage.schema.Tables.JOB;
import static dayglass.storage.schema.Tables.JOB_PURCHASE_OFFER;
import static dayglass.storage.schema.Tables.PURCHASE_OFFER;
import static dayglass.storage.schema.Tables.SUPPLIER;

import dayglass.base.Currency;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.PurchaseOffers;
import dayglass.catalogue.Supplier;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.PurchaseOfferRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Purchase offers as rows, what is offered as JSON. */
public final class JooqPurchaseOffers extends VersionedTable<PurchaseOffer.Id, PurchaseOffer, PurchaseOfferRecord>
        implements PurchaseOffers {
    public JooqPurchaseOffers(Database database) {
        super(
                database,
                new Shape<>("purchase offer", PURCHASE_OFFER.ID, PURCHASE_OFFER.VERSION, PurchaseOffer.Id::new));
    }

    @Override
    public List<Stored<PurchaseOffer.Id, PurchaseOffer>> madeBy(Supplier.Id supplier) {
        return database.reading(sql -> sql.selectFrom(PURCHASE_OFFER)
                .where(PURCHASE_OFFER.SUPPLIER_ID.eq(supplier.number()))
                .orderBy(PURCHASE_OFFER.ID)
                .fetch(row -> stored(sql, row)));
    }

    @Override
    protected void fill(PurchaseOfferRecord row, PurchaseOffer facts) {
        row.setSupplierId(facts.supplier().number());
        row.setCurrency(facts.currency().code());
        row.setOfferJson(FactsJson.offer(facts.offer()));
        row.setValidUntil(facts.validUntil().map(LocalDate::toString).orElse(null));
    }

    @Override
    protected PurchaseOffer facts(DSLContext sql, PurchaseOfferRecord row) {
        Currency currency = Currency.of(row.getCurrency());
        return new PurchaseOffer(
                new Supplier.Id(row.getSupplierId()),
                currency,
                FactsJson.offer(row.getOfferJson(), currency),
                Optional.ofNullable(row.getValidUntil()).map(LocalDate::parse));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<PurchaseOffer.Id> self, PurchaseOffer facts) {
        return missing(sql, "/supplierId", "supplier", SUPPLIER.ID, facts.supplier())
                .or(() -> self.flatMap(id -> countedOn(sql.select(JOB.ID)
                        .from(JOB)
                        .join(JOB_PURCHASE_OFFER)
                        .on(JOB_PURCHASE_OFFER.JOB_ID.eq(JOB.ID))
                        .where(
                                JOB_PURCHASE_OFFER.PURCHASE_OFFER_ID.eq(id.number()),
                                JOB.CURRENCY.ne(facts.currency().code())))));
    }

    @Override
    protected List<String> uses(DSLContext sql, PurchaseOffer.Id id) {
        return named(
                "job",
                sql.select(JOB_PURCHASE_OFFER.JOB_ID)
                        .from(JOB_PURCHASE_OFFER)
                        .where(JOB_PURCHASE_OFFER.PURCHASE_OFFER_ID.eq(id.number())));
    }
}
