package dayglass.shelf;

import dayglass.catalogue.Camera;
import dayglass.optics.FitQuestion;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.Optional;

/** A camera's facts, its sensor under the names that a fit asks for it by. */
public final class CameraJson {
    private static final int MOST_PHOTOSITES = 999_999_999;

    private CameraJson() {}

    public static Reader<Camera> reader() {
        return Fields.object(CameraJson::read);
    }

    private static Read<Camera> read(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<String> mode = fields.required("mode", Readers.name());
        Read<BigDecimal> width = fields.required("width", Decimals.positive());
        Read<BigDecimal> height = fields.required("height", Decimals.positive());
        Read<Optional<Integer>> wide = fields.optional("photositesWide", Readers.whole(1, MOST_PHOTOSITES));
        Read<Optional<Integer>> high = fields.optional("photositesHigh", Readers.whole(1, MOST_PHOTOSITES));
        Read<String> mount = fields.required("mount", Readers.name());
        if (fields.has("photositesWide") != fields.has("photositesHigh")) {
            fields.place()
                    .member(fields.has("photositesWide") ? "photositesHigh" : "photositesWide")
                    .fault("is missing: give both counts or neither");
        }
        return fields.build(() -> new Camera(
                name.get(),
                mode.get(),
                new FitQuestion.Camera(
                        width.get(),
                        height.get(),
                        wide.get()
                                .map(each -> new FitQuestion.Photosites(
                                        each, high.get().orElseThrow())),
                        mount.get())));
    }

    public static void write(Json.Members members, Camera camera) {
        members.put("name", camera.name()).put("mode", camera.mode());
        writeRecorded(members, camera.recorded());
    }

    /** The sensor alone, as a fit asks for it. */
    public static void writeRecorded(Json.Members members, FitQuestion.Camera recorded) {
        members.put("width", recorded.width().toPlainString())
                .put("height", recorded.height().toPlainString());
        recorded.photosites()
                .ifPresent(count -> members.put("photositesWide", count.wide()).put("photositesHigh", count.high()));
        members.put("mount", recorded.mount());
    }
}
