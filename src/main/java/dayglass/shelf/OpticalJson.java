package dayglass.shelf;

import dayglass.catalogue.LensModel;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The optical record among the members of a lens model, in millimetres where a name says nothing else. */
final class OpticalJson {
    private static final int MOST_SQUEEZE = 3;
    private static final int MOST_MM = 100_000;
    private static final int MOST_STOPS = 20;
    private static final int MOST_WEIGHT_G = 1_000_000;
    private static final int MOST_BLADES = 100;

    private static final Set<LensModel.Kind> PRIMES =
            Set.of(LensModel.Kind.SPHERICAL_PRIME, LensModel.Kind.ANAMORPHIC_PRIME);
    private static final Set<LensModel.Kind> ZOOMS =
            Set.of(LensModel.Kind.SPHERICAL_ZOOM, LensModel.Kind.ANAMORPHIC_ZOOM);

    private OpticalJson() {}

    static Read<LensModel.OpticalRecord> read(Fields fields, Read<LensModel.Kind> kind) {
        Read<Focal> focal = focal(fields, kind);
        Read<Optional<BigDecimal>> tStop = fields.optional("tStop", positive());
        Read<BigDecimal> squeeze = fields.optional("squeeze", Decimals.decimal(1, MOST_SQUEEZE), BigDecimal.ONE);
        Read<Optional<BigDecimal>> imageCircle = fields.optional("imageCircle", positive());
        Read<List<String>> mounts = fields.optional("mounts", Readers.distinct(Readers.name()), List.of());
        Read<Optional<BigDecimal>> closeFocus = fields.optional("closeFocusM", positive());
        Read<Optional<BigDecimal>> front = fields.optional("frontMm", positive());
        Read<Optional<Integer>> weight = fields.optional("weightG", Readers.whole(1, MOST_WEIGHT_G));
        Read<Optional<BigDecimal>> length = fields.optional("lengthMm", positive());
        Read<Optional<Integer>> blades = fields.optional("irisBlades", Readers.whole(1, MOST_BLADES));
        Read<Optional<String>> scale = fields.optional("focusScale", Readers.oneOf(List.of("feet", "metres")));
        Read<Optional<BigDecimal>> closeDown = fields.optional("closeDownStops", Decimals.decimal(0, MOST_STOPS));
        Read<Optional<BigDecimal>> lightLoss = fields.optional("lightLossStops", Decimals.decimal(0, MOST_STOPS));
        Read<Optional<String>> focusing = fields.optional("focusing", Readers.oneOf(List.of("single", "dual")));
        boolean good = List.of(
                        focal,
                        tStop,
                        squeeze,
                        imageCircle,
                        mounts,
                        closeFocus,
                        front,
                        weight,
                        length,
                        blades,
                        scale,
                        closeDown,
                        lightLoss,
                        focusing)
                .stream()
                .allMatch(Read::isGood);
        return !good
                ? Read.bad()
                : Read.good(new LensModel.OpticalRecord(
                        focal.get().shortEnd(),
                        focal.get().longEnd(),
                        tStop.get(),
                        squeeze.get(),
                        imageCircle.get(),
                        mounts.get(),
                        closeFocus.get(),
                        front.get(),
                        weight.get(),
                        length.get(),
                        blades.get(),
                        scale.get(),
                        closeDown.get(),
                        lightLoss.get(),
                        focusing.get()));
    }

    private record Focal(Optional<BigDecimal> shortEnd, Optional<BigDecimal> longEnd) {}

    /** {@code focal}, or both of {@code minFocal} and {@code maxFocal}. */
    private static Read<Focal> focal(Fields fields, Read<LensModel.Kind> kind) {
        Read<Optional<BigDecimal>> one = fields.optional("focal", positive());
        Read<Optional<BigDecimal>> min = fields.optional("minFocal", positive());
        Read<Optional<BigDecimal>> max = fields.optional("maxFocal", positive());
        if (!one.isGood() || !min.isGood() || !max.isGood()) {
            return Read.bad();
        }
        Place place = fields.place();
        boolean range = min.get().isPresent() || max.get().isPresent();
        if (one.get().isPresent() && range) {
            return place.member("focal").fault("stands beside the end of a range: keep \"focal\" or the two ends");
        }
        if (min.get().isPresent() != max.get().isPresent()) {
            return place.member(min.get().isPresent() ? "maxFocal" : "minFocal")
                    .fault("is missing: a range has both its ends");
        }
        if (range && min.get().orElseThrow().compareTo(max.get().orElseThrow()) >= 0) {
            return place.member("maxFocal").fault("must be longer than \"minFocal\": swap the two");
        }
        if (range && kind.found().filter(PRIMES::contains).isPresent()) {
            return place.member("minFocal").fault("belongs to a zoom: a prime has one \"focal\"");
        }
        if (one.get().isPresent() && kind.found().filter(ZOOMS::contains).isPresent()) {
            return place.member("focal").fault("belongs to a prime: a zoom has \"minFocal\" and \"maxFocal\"");
        }
        return Read.good(new Focal(one.get().or(min::get), max.get()));
    }

    private static Reader<BigDecimal> positive() {
        return (json, place) -> {
            Read<BigDecimal> number = Decimals.decimal(0, MOST_MM).read(json, place);
            return number.isGood() && number.get().signum() == 0
                    ? place.fault("must be more than 0: leave it out where it is not known")
                    : number;
        };
    }

    static void write(Json.Members members, LensModel.OpticalRecord record) {
        boolean range = record.longestFocalMm().isPresent();
        put(members, range ? "minFocal" : "focal", record.focalMm());
        put(members, "maxFocal", record.longestFocalMm());
        put(members, "tStop", record.tStop());
        put(
                members,
                "squeeze",
                Optional.of(record.squeeze()).filter(squeeze -> squeeze.compareTo(BigDecimal.ONE) != 0));
        put(members, "imageCircle", record.imageCircleMm());
        if (!record.mounts().isEmpty()) {
            members.put("mounts", Json.texts(record.mounts()));
        }
        put(members, "closeFocusM", record.closeFocusM());
        put(members, "frontMm", record.frontMm());
        record.weightG().ifPresent(grams -> members.put("weightG", grams));
        put(members, "lengthMm", record.lengthMm());
        record.irisBlades().ifPresent(blades -> members.put("irisBlades", blades));
        record.focusScale().ifPresent(scale -> members.put("focusScale", scale));
        put(members, "closeDownStops", record.closeDownStops());
        put(members, "lightLossStops", record.lightLossStops());
        record.focusing().ifPresent(focusing -> members.put("focusing", focusing));
    }

    private static void put(Json.Members members, String name, Optional<BigDecimal> number) {
        number.ifPresent(value -> members.put(name, value.toPlainString()));
    }
}
