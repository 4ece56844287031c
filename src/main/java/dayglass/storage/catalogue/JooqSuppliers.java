package dayglass.storage.catalogue;

import static dayglass.storage.schema.Tables.PURCHASE_OFFER;
import static dayglass.storage.schema.Tables.RATE_CARD;
import static dayglass.storage.schema.Tables.SUPPLIER;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.Supplier;
import dayglass.catalogue.Suppliers;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.SupplierRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Suppliers as rows. */
public final class JooqSuppliers extends VersionedTable<Supplier.Id, Supplier, SupplierRecord> implements Suppliers {
    public JooqSuppliers(Database database) {
        super(database, new Shape<>("supplier", SUPPLIER.ID, SUPPLIER.VERSION, Supplier.Id::new));
    }

    @Override
    public Optional<Stored<Supplier.Id, Supplier>> named(String name) {
        return database.reading(
                sql -> sql.selectFrom(SUPPLIER).where(SUPPLIER.NAME.eq(name)).fetchOptional(row -> stored(sql, row)));
    }

    @Override
    public Optional<Stored<Supplier.Id, Supplier>> house() {
        return database.reading(
                sql -> sql.selectFrom(SUPPLIER).where(SUPPLIER.IS_HOUSE.eq(1)).fetchOptional(row -> stored(sql, row)));
    }

    @Override
    protected void fill(SupplierRecord row, Supplier facts) {
        row.setName(facts.name());
        row.setIsHouse(facts.house() ? 1 : 0);
    }

    @Override
    protected Supplier facts(DSLContext sql, SupplierRecord row) {
        return new Supplier(row.getName(), row.getIsHouse() == 1);
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Supplier.Id> self, Supplier facts) {
        return named(facts.name())
                .filter(other -> !self.equals(Optional.of(other.id())))
                .map(other -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Supplier " + other.id().number() + " already has the name " + facts.name() + "."))
                .or(() -> house().filter(other -> facts.house() && !self.equals(Optional.of(other.id())))
                        .map(other -> new Problem(
                                Problem.Code.ALREADY_THERE,
                                "Supplier " + other.id().number() + ", "
                                        + other.facts().name() + ", is this house already.")));
    }

    @Override
    protected List<String> uses(DSLContext sql, Supplier.Id id) {
        List<String> uses = new ArrayList<>();
        uses.addAll(named(
                "rate card", sql.select(RATE_CARD.ID).from(RATE_CARD).where(RATE_CARD.SUPPLIER_ID.eq(id.number()))));
        uses.addAll(named(
                "purchase offer",
                sql.select(PURCHASE_OFFER.ID).from(PURCHASE_OFFER).where(PURCHASE_OFFER.SUPPLIER_ID.eq(id.number()))));
        return uses;
    }
}
