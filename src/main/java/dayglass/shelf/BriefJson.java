package dayglass.shelf;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.LensModel.Look;
import dayglass.job.Brief;
import dayglass.job.Job;
import dayglass.optics.FitQuestion;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.fit.FitRequestReader;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A job's brief: its picture as a fit asks for it, and what is wished. */
public final class BriefJson {
    private static final int MOST_SQUEEZE = 3;
    private static final int MOST_WEIGHT = 1_000;
    private static final int BEST_GRADE = 5;
    private static final int MOST_TOLERANCE = 100;

    private BriefJson() {}

    /** The brief of a job; whether its mount is known and its budget in the job's currency is not seen to here. */
    public static Reader<Brief> reader(Job.Id job) {
        return Fields.object(fields -> read(fields, job));
    }

    private static Read<Brief> read(Fields fields, Job.Id job) {
        Read<Brief.Picture> picture =
                fields.required("picture", FitRequestReader.setting().map(BriefJson::picture));
        Read<Optional<BigDecimal>> squeeze = fields.optional("squeeze", Decimals.decimal(1, MOST_SQUEEZE));
        Read<Map<Look, Brief.Wish>> looks = fields.optional("looks", Fields.object(BriefJson::looks), Map.of());
        Read<Optional<Money>> budget = fields.optional("budget", MoneyJson.money());
        Read<Map<String, BigDecimal>> focals = fields.optional("focals", Readers.words(Decimals.positive()), Map.of());
        Read<Percent> tolerance =
                fields.optional("tolerancePercent", Decimals.percent(0, MOST_TOLERANCE), Brief.USUAL_TOLERANCE);
        return fields.build(() ->
                new Brief(job, picture.get(), squeeze.get(), looks.get(), budget.get(), focals.get(), tolerance.get()));
    }

    private static Brief.Picture picture(FitQuestion.Setting setting) {
        return new Brief.Picture(setting.camera(), setting.aspect(), setting.light(), setting.set());
    }

    private static Read<Map<Look, Brief.Wish>> looks(Fields fields) {
        Map<Look, Brief.Wish> looks = new EnumMap<>(Look.class);
        for (Look look : Look.values()) {
            fields.optional(LensModelJson.memberOf(look), wish())
                    .found()
                    .flatMap(wish -> wish)
                    .ifPresent(wish -> looks.put(look, wish));
        }
        return fields.build(() -> looks);
    }

    private static Reader<Brief.Wish> wish() {
        return Fields.object(fields -> {
            Read<Integer> grade = fields.required("grade", Readers.whole(1, BEST_GRADE));
            Read<BigDecimal> weight = fields.optional("weight", Decimals.positiveUpTo(MOST_WEIGHT), BigDecimal.ONE);
            return fields.build(() -> new Brief.Wish(grade.get(), weight.get()));
        });
    }

    public static Json.Obj write(Brief brief) {
        Json.Members members = Json.object();
        write(members, brief);
        return members.build();
    }

    public static void write(Json.Members members, Brief brief) {
        members.put("picture", picture(brief.picture()));
        put(members, "squeeze", brief.squeeze());
        if (!brief.looks().isEmpty()) {
            Json.Members looks = Json.object();
            new TreeMap<>(brief.looks())
                    .forEach((look, wish) -> looks.put(
                            LensModelJson.memberOf(look),
                            Json.object()
                                    .put("grade", wish.grade())
                                    .put("weight", wish.weight().toPlainString())
                                    .build()));
            members.put("looks", looks.build());
        }
        brief.budget().ifPresent(budget -> members.put("budget", MoneyJson.write(budget)));
        if (!brief.focals().isEmpty()) {
            Json.Members focals = Json.object();
            new TreeMap<>(brief.focals()).forEach((slot, focal) -> focals.put(slot, focal.toPlainString()));
            members.put("focals", focals.build());
        }
        members.put("tolerancePercent", brief.tolerance().value().toPlainString());
    }

    private static Json picture(Brief.Picture picture) {
        Json.Members camera = Json.object();
        CameraJson.writeRecorded(camera, picture.camera());
        Json.Members members = Json.object()
                .put("camera", camera.build())
                .put(
                        "delivery",
                        Json.object()
                                .put("aspect", picture.aspect().toPlainString())
                                .build());
        FitQuestion.Light light = picture.light();
        if (!light.equals(FitQuestion.Light.NOT_ASKED)) {
            Json.Members lit = Json.object();
            put(lit, "lux", light.lux());
            light.iso().ifPresent(iso -> lit.put("iso", iso));
            put(lit, "framesPerSecond", light.framesPerSecond());
            put(lit, "shutterAngle", light.shutterAngle());
            lit.put("filterStops", light.filterStops().toPlainString());
            members.put("light", lit.build());
        }
        if (!picture.set().equals(FitQuestion.OnSet.NOT_ASKED)) {
            Json.Members set = Json.object();
            put(set, "closestSubjectM", picture.set().closestSubjectM());
            picture.set().payloadG().ifPresent(grams -> set.put("payloadG", grams));
            put(set, "matteBoxMm", picture.set().matteBoxMm());
            members.put("set", set.build());
        }
        return members.build();
    }

    private static void put(Json.Members members, String name, Optional<BigDecimal> number) {
        number.ifPresent(value -> members.put(name, value.toPlainString()));
    }
}
