package dayglass.storage.catalogue;

import static dayglass.storage.schema.Tables.CAMERA;
import static dayglass.storage.schema.Tables.MOUNT;

import dayglass.base.Problem;
import dayglass.catalogue.Camera;
import dayglass.catalogue.Cameras;
import dayglass.optics.FitQuestion;
import dayglass.optics.Mounts;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.CameraRecord;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Cameras as rows. */
public final class JooqCameras extends VersionedTable<Camera.Id, Camera, CameraRecord> implements Cameras {
    public JooqCameras(Database database) {
        super(database, new Shape<>("camera", CAMERA.ID, CAMERA.VERSION, Camera.Id::new));
    }

    @Override
    protected void fill(CameraRecord row, Camera facts) {
        FitQuestion.Camera recorded = facts.recorded();
        row.setName(facts.name());
        row.setMode(facts.mode());
        row.setWidth(recorded.width().toPlainString());
        row.setHeight(recorded.height().toPlainString());
        row.setPhotositesWide(
                recorded.photosites().map(FitQuestion.Photosites::wide).orElse(null));
        row.setPhotositesHigh(
                recorded.photosites().map(FitQuestion.Photosites::high).orElse(null));
        row.setMount(recorded.mount());
    }

    @Override
    protected Camera facts(DSLContext sql, CameraRecord row) {
        return new Camera(
                row.getName(),
                row.getMode(),
                new FitQuestion.Camera(
                        new BigDecimal(row.getWidth()),
                        new BigDecimal(row.getHeight()),
                        Optional.ofNullable(row.getPhotositesWide())
                                .map(wide -> new FitQuestion.Photosites(wide, row.getPhotositesHigh())),
                        row.getMount()));
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Camera.Id> self, Camera facts) {
        Optional<Problem> taken = sql.selectFrom(CAMERA)
                .where(
                        CAMERA.NAME.eq(facts.name()),
                        CAMERA.MODE.eq(facts.mode()),
                        CAMERA.ID.ne(self.map(Camera.Id::number).orElse(0L)))
                .fetchOptional(row -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Camera " + row.getId() + " already has the name " + facts.name() + " and the mode "
                                + facts.mode() + "."));
        return taken.or(() -> unknownMount(sql, facts.recorded().mount()));
    }

    private static Optional<Problem> unknownMount(DSLContext sql, String mount) {
        boolean known = Mounts.KNOWN.flangeMm(mount).isPresent() || sql.fetchExists(MOUNT, MOUNT.NAME.eq(mount));
        return known
                ? Optional.empty()
                : Optional.of(Problem.faulty(
                        "/mount",
                        "no mount of that name is known: use one of "
                                + String.join(", ", Mounts.KNOWN.byName().keySet())
                                + ", or add it to the mounts first"));
    }

    @Override
    protected List<String> uses(DSLContext sql, Camera.Id id) {
        return List.of();
    }
}
