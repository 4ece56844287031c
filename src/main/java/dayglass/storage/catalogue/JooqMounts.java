package dayglass.storage.catalogue;

import static dayglass.storage.schema.Tables.CAMERA;
import static dayglass.storage.schema.Tables.MOUNT;

import dayglass.base.Problem;
import dayglass.catalogue.Mount;
import dayglass.catalogue.OwnMounts;
import dayglass.optics.Mounts;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.MountRecord;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** The house's own mounts as rows. */
public final class JooqMounts extends VersionedTable<Mount.Id, Mount, MountRecord> implements OwnMounts {
    public JooqMounts(Database database) {
        super(database, new Shape<>("mount", MOUNT.ID, MOUNT.VERSION, Mount.Id::new));
    }

    @Override
    protected void fill(MountRecord row, Mount facts) {
        row.setName(facts.name());
        row.setFlangeMm(facts.flangeMm().toPlainString());
        row.setNote(facts.note());
    }

    @Override
    protected Mount facts(DSLContext sql, MountRecord row) {
        return new Mount(row.getName(), new BigDecimal(row.getFlangeMm()), row.getNote());
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Mount.Id> self, Mount facts) {
        if (Mounts.KNOWN.flangeMm(facts.name()).isPresent()) {
            return Optional.of(
                    Problem.faulty("/name", "is a published mount and may not be defined again: name yours apart"));
        }
        Optional<Problem> taken = sql.selectFrom(MOUNT)
                .where(
                        MOUNT.NAME.eq(facts.name()),
                        MOUNT.ID.ne(self.map(Mount.Id::number).orElse(0L)))
                .fetchOptional(row -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Mount " + row.getId() + " already has the name " + facts.name() + "."));
        return taken.or(() -> renamedWhileUsed(sql, self, facts));
    }

    /** A camera names its mount, so the name stays while one does. */
    private static Optional<Problem> renamedWhileUsed(DSLContext sql, Optional<Mount.Id> self, Mount facts) {
        List<String> cameras = self.map(id -> cameras(sql, id)).orElse(List.of());
        boolean renamed = self.isPresent()
                && sql.fetchExists(MOUNT, MOUNT.ID.eq(self.get().number()), MOUNT.NAME.ne(facts.name()));
        return renamed && !cameras.isEmpty()
                ? Optional.of(Problem.faulty(
                        "/name", "is counted on by " + String.join(", ", cameras) + ": keep it, or change that first"))
                : Optional.empty();
    }

    private static List<String> cameras(DSLContext sql, Mount.Id id) {
        return named(
                "camera",
                sql.select(CAMERA.ID)
                        .from(CAMERA.join(MOUNT).on(MOUNT.NAME.eq(CAMERA.MOUNT)))
                        .where(MOUNT.ID.eq(id.number())));
    }

    @Override
    protected List<String> uses(DSLContext sql, Mount.Id id) {
        return cameras(sql, id);
    }
}
