package dayglass.wire.fit;

import dayglass.optics.FitQuestion;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The lens of a request: a focal length, or the two ends of a zoom. */
final class LensReader {
    private LensReader() {}

    static Reader<FitQuestion.Lens> lens(Read<MountTable> table) {
        return Fields.object(fields -> lens(fields, table));
    }

    private static Read<FitQuestion.Lens> lens(Fields fields, Read<MountTable> table) {
        Read<List<BigDecimal>> focals = focals(fields);
        Read<BigDecimal> tStop = fields.required("tStop", Decimals.positive());
        Read<BigDecimal> squeeze = fields.required("squeeze", FitRequestReader.squeeze());
        Read<Optional<BigDecimal>> circle = fields.optional("imageCircle", Decimals.positive());
        Read<List<String>> mounts =
                fields.required("mounts", Readers.notEmpty(Readers.distinct(MountTable.known(table))));
        Read<Optional<BigDecimal>> closeFocus = fields.optional("closeFocusM", Decimals.positive());
        Read<Optional<BigDecimal>> front = fields.optional("frontMm", Decimals.positive());
        Read<Optional<Integer>> weight = fields.optional("weightG", Readers.whole(1, FitRequestReader.MOST));
        Read<BigDecimal> closeDown = fields.optional("closeDownStops", FitRequestReader.stops(), BigDecimal.ZERO);
        return fields.build(() -> new FitQuestion.Lens(
                focals.get(),
                tStop.get(),
                squeeze.get(),
                circle.get(),
                mounts.get(),
                closeFocus.get(),
                front.get(),
                weight.get(),
                closeDown.get()));
    }

    private static Read<List<BigDecimal>> focals(Fields fields) {
        boolean zoom = fields.has("minFocal") || fields.has("maxFocal");
        if (!zoom) {
            return fields.required("focal", Decimals.positive()).map(List::of);
        }
        Read<Optional<BigDecimal>> single = fields.optional("focal", Decimals.positive());
        Read<BigDecimal> shortest = fields.required("minFocal", Decimals.positive());
        Read<BigDecimal> longest = fields.required("maxFocal", Decimals.positive());
        if (fields.has("focal")) {
            return fields.place().fault("give focal, or minFocal and maxFocal of a zoom, not both");
        }
        if (FitRequestReader.isReversed(shortest.map(Optional::of), longest.map(Optional::of))) {
            return fields.place().fault("minFocal is longer than maxFocal: swap them");
        }
        return single.isGood() && shortest.isGood() && longest.isGood()
                ? Read.good(Stream.of(shortest.get(), longest.get()).toList())
                : Read.bad();
    }
}
