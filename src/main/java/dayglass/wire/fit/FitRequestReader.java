package dayglass.wire.fit;

import dayglass.optics.FitQuestion;
import dayglass.optics.Mounts;
import dayglass.wire.Checked;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.Optional;

/** A whole request: every default filled in, or every fault told. */
public final class FitRequestReader {
    /** Counts and grams, at most. */
    static final int MOST = 999_999_999;

    /** No glass takes or wants as many; more would only make figures that nobody can read. */
    private static final int MOST_STOPS = 100;

    private static final int FULL_TURN = 360;
    private static final int MOST_ASPECT = 5;
    private static final int MOST_SQUEEZE = 3;

    private FitRequestReader() {}

    /** What the text asks, or everything that is wrong with it. */
    public static Checked<FitQuestion> read(byte[] text) {
        return request().read(text);
    }

    public static Reader<FitQuestion> request() {
        return Fields.object(fields -> {
            if (!fields.has("lens")) {
                fields.place().member("lens").fault("is missing: add \"lens\"", "fill this in");
            }
            return asked(fields, MountTable.of(Mounts.KNOWN))
                    .map(asked -> asked.setting().of(asked.lens().orElseThrow(), asked.attachment()));
        });
    }

    /**
     * A request whose glass may come from elsewhere.
     *
     * @param lens as typed, where one is
     * @param attachment as typed, where one is
     */
    public record Asked(
            FitQuestion.Setting setting,
            Optional<FitQuestion.Lens> lens,
            Optional<FitQuestion.Attachment> attachment) {}

    /**
     * A request that may leave out the lens.
     *
     * @param mounts those that are known beside the request's own table
     */
    public static Reader<Asked> asked(Mounts mounts) {
        return Fields.object(fields -> asked(fields, MountTable.of(mounts)));
    }

    /** What is asked but glass and mounts; that the camera's mount is known is for the caller to see to. */
    public static Reader<FitQuestion.Setting> setting() {
        return Fields.object(fields -> {
            Read<FitQuestion.Camera> camera =
                    fields.required("camera", Fields.object(members -> camera(members, Read.bad())));
            Read<BigDecimal> aspect = fields.required("delivery", Fields.object(FitRequestReader::aspect));
            Read<FitQuestion.Light> light = lightOf(fields);
            Read<FitQuestion.OnSet> set = setOf(fields);
            return fields.build(
                    () -> new FitQuestion.Setting(camera.get(), aspect.get(), light.get(), set.get(), Mounts.KNOWN));
        });
    }

    private static Read<FitQuestion.Light> lightOf(Fields fields) {
        return fields.optional("light", Fields.object(FitRequestReader::light), FitQuestion.Light.NOT_ASKED);
    }

    private static Read<FitQuestion.OnSet> setOf(Fields fields) {
        return fields.optional("set", Fields.object(FitRequestReader::set), FitQuestion.OnSet.NOT_ASKED);
    }

    private static Read<Asked> asked(Fields fields, MountTable known) {
        Read<MountTable> table = fields.optional("mountTable", MountTable.reader(known), known);
        Read<FitQuestion.Camera> camera = fields.required("camera", Fields.object(members -> camera(members, table)));
        Read<BigDecimal> aspect = fields.required("delivery", Fields.object(FitRequestReader::aspect));
        Read<FitQuestion.Light> light = lightOf(fields);
        Read<FitQuestion.OnSet> set = setOf(fields);
        Read<Optional<FitQuestion.Lens>> lens = fields.optional("lens", LensReader.lens(table));
        Read<Optional<FitQuestion.Attachment>> attachment =
                fields.optional("attachment", Fields.object(FitRequestReader::attachment));
        return fields.build(() -> new Asked(
                new FitQuestion.Setting(
                        camera.get(),
                        aspect.get(),
                        light.get(),
                        set.get(),
                        table.get().mounts()),
                lens.get(),
                attachment.get()));
    }

    private static Read<FitQuestion.Camera> camera(Fields fields, Read<MountTable> table) {
        Read<BigDecimal> width = fields.required("width", Decimals.positive());
        Read<BigDecimal> height = fields.required("height", Decimals.positive());
        Read<Optional<Integer>> wide = fields.optional("photositesWide", Readers.whole(1, MOST));
        Read<Optional<Integer>> high = fields.optional("photositesHigh", Readers.whole(1, MOST));
        requireBoth(fields, "photositesWide", "photositesHigh");
        Read<String> mount = fields.required("mount", MountTable.known(table));
        return fields.build(() -> new FitQuestion.Camera(
                width.get(),
                height.get(),
                wide.get()
                        .map(each -> new FitQuestion.Photosites(each, high.get().orElseThrow())),
                mount.get()));
    }

    /** One of two counts says nothing without the other. */
    private static void requireBoth(Fields fields, String one, String other) {
        if (fields.has(one) != fields.has(other)) {
            String missing = fields.has(one) ? other : one;
            fields.place().member(missing).fault("is missing: give both counts or neither");
        }
    }

    private static Read<BigDecimal> aspect(Fields fields) {
        Read<BigDecimal> aspect = fields.required("aspect", Decimals.decimal(1, MOST_ASPECT));
        return fields.build(aspect::get);
    }

    private static Read<FitQuestion.Light> light(Fields fields) {
        Read<Optional<BigDecimal>> lux = fields.optional("lux", Decimals.positive());
        Read<Optional<Integer>> iso = fields.optional("iso", Readers.whole(1, MOST));
        Read<Optional<BigDecimal>> rate = fields.optional("framesPerSecond", Decimals.positive());
        Read<Optional<BigDecimal>> angle = fields.optional("shutterAngle", Decimals.positiveUpTo(FULL_TURN));
        Read<BigDecimal> filters = fields.optional("filterStops", stops(), BigDecimal.ZERO);
        return fields.build(() -> new FitQuestion.Light(lux.get(), iso.get(), rate.get(), angle.get(), filters.get()));
    }

    private static Read<FitQuestion.OnSet> set(Fields fields) {
        Read<Optional<BigDecimal>> closest = fields.optional("closestSubjectM", Decimals.positive());
        Read<Optional<Integer>> payload = fields.optional("payloadG", Readers.whole(1, MOST));
        Read<Optional<BigDecimal>> box = fields.optional("matteBoxMm", Decimals.positive());
        return fields.build(() -> new FitQuestion.OnSet(closest.get(), payload.get(), box.get()));
    }

    private static Read<FitQuestion.Attachment> attachment(Fields fields) {
        Read<BigDecimal> squeeze = fields.required("squeeze", squeeze());
        Read<BigDecimal> loss = fields.optional("lightLossStops", stops(), BigDecimal.ZERO);
        Read<BigDecimal> closeDown = fields.optional("closeDownStops", stops(), BigDecimal.ZERO);
        Read<Optional<BigDecimal>> least = fields.optional("minFocal", Decimals.positive());
        Read<Optional<BigDecimal>> most = fields.optional("maxFocal", Decimals.positive());
        Read<Optional<BigDecimal>> front = fields.optional("frontMm", Decimals.positive());
        Read<Optional<Integer>> weight = fields.optional("weightG", Readers.whole(1, MOST));
        Read<Optional<BigDecimal>> closeFocus = fields.optional("closeFocusM", Decimals.positive());
        Read<Boolean> dual = fields.required(
                "focusing",
                Readers.word(java.util.Map.of("single", "single", "dual", "dual"))
                        .map("dual"::equals));
        if (isReversed(least, most)) {
            fields.place().fault("minFocal is longer than maxFocal: swap them");
        }
        return fields.build(() -> new FitQuestion.Attachment(
                squeeze.get(),
                loss.get(),
                closeDown.get(),
                least.get(),
                most.get(),
                front.get(),
                weight.get(),
                closeFocus.get(),
                dual.get()));
    }

    /** Whether both are given and good, and the first is longer. */
    static boolean isReversed(Read<Optional<BigDecimal>> least, Read<Optional<BigDecimal>> most) {
        Optional<BigDecimal> from = least.found().flatMap(each -> each);
        Optional<BigDecimal> to = most.found().flatMap(each -> each);
        return from.isPresent() && to.isPresent() && from.get().compareTo(to.get()) > 0;
    }

    static Reader<BigDecimal> squeeze() {
        return Decimals.decimal(1, MOST_SQUEEZE);
    }

    static Reader<BigDecimal> stops() {
        return Decimals.decimal(0, MOST_STOPS);
    }
}
