package dayglass.shelf.desk;

import dayglass.base.Percent;
import dayglass.catalogue.LensModel;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PackageAsked.Asked;
import dayglass.desk.price.Wish;
import dayglass.desk.words.DateWords;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.CostingRequestWriter;
import dayglass.wire.costing.ScheduleReader;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a caller asks for. The days are {@code dates} in words or a {@code schedule}; a line names a model, a set, a unit
 * or a focal length.
 */
public final class PackageJson {
    private static final int MOST_LINES = 60;
    private static final int MOST_ALIKE = 20;
    private static final int LONGEST_REASON = 500;
    private static final int LONGEST_WORDS = 300;
    private static final int MOST_MM = 10_000;
    private static final List<String> WISHES = List.of("model", "set", "unit", "focalMm");

    private PackageJson() {}

    /**
     * A package by itself.
     *
     * @param today what words for days are counted from
     */
    public static Reader<PackageAsked> reader(LocalDate today) {
        return Fields.object(fields -> {
            Read<PackageAsked> asked = members(fields, today);
            return fields.build(asked::get);
        });
    }

    /** The members of a package among those of an object that says more. */
    public static Read<PackageAsked> members(Fields fields, LocalDate today) {
        Read<Schedule> schedule = schedule(fields, today);
        Read<List<Asked>> lines = fields.required("lines", lines());
        Read<Boolean> insured = fields.optional("insured", Readers.yesOrNo(), false);
        Read<Percent> off = fields.optional("discountPercent", Decimals.percent(0, 100), Percent.ZERO);
        Read<String> reason = fields.optional("discountReason", Readers.text(LONGEST_REASON), "");
        boolean good = schedule.isGood() && lines.isGood() && insured.isGood() && off.isGood() && reason.isGood();
        return good
                ? Read.good(new PackageAsked(lines.get(), schedule.get(), insured.get(), off.get(), reason.get()))
                : Read.bad();
    }

    private static Read<Schedule> schedule(Fields fields, LocalDate today) {
        if (fields.has("schedule")) {
            Read<Schedule> schedule = fields.required("schedule", PackageJson::lit);
            return fields.has("dates")
                    ? fields.place().member("dates").fault("says the days twice: give dates or schedule, not both")
                    : schedule;
        }
        return fields.required("dates", (json, place) -> {
            Read<String> words = Readers.text(LONGEST_WORDS).read(json, place);
            return words.isGood()
                    ? DateWords.read(words.get(), today)
                            .fold(
                                    Read::good,
                                    problem ->
                                            place.fault(problem.faults().get(0).message()))
                    : Read.bad();
        });
    }

    /** A schedule on which something is used. */
    private static Read<Schedule> lit(Json json, Place place) {
        Read<Schedule> schedule = ScheduleReader.schedule().read(json, place);
        boolean dark = schedule.isGood() && schedule.get().spans().stream().allMatch(span -> span.use() == DayUse.DARK);
        return dark ? place.fault("has dark days alone: add a day of use") : schedule;
    }

    private static Reader<List<Asked>> lines() {
        Reader<List<Asked>> list = Readers.notEmpty(Readers.list(Fields.object(PackageJson::line)));
        return (json, place) ->
                json instanceof Json.Arr lines && lines.entries().size() > MOST_LINES
                        ? place.fault("has more than " + MOST_LINES + " lines: make two packages of it")
                        : list.read(json, place);
    }

    private static Read<Asked> line(Fields fields) {
        Read<Optional<LensModel.Id>> model = fields.optional("model", Ids.id(LensModel.Id::new));
        Read<Optional<LensSet.Id>> set = fields.optional("set", Ids.id(LensSet.Id::new));
        Read<Optional<Unit.Id>> unit = fields.optional("unit", Ids.id(Unit.Id::new));
        Read<Optional<BigDecimal>> focal = fields.optional("focalMm", Decimals.positiveUpTo(MOST_MM));
        Read<Optional<BigDecimal>> circle = fields.optional("circleMm", Decimals.positiveUpTo(MOST_MM));
        Read<Integer> count = fields.optional("count", Readers.whole(1, MOST_ALIKE), 1);
        Read<Percent> off = fields.optional("discountPercent", Decimals.percent(0, 100), Percent.ZERO);
        Place place = fields.place();
        if (WISHES.stream().filter(fields::has).count() != 1) {
            return place.fault("asks for one thing: give model, set, unit or focalMm", "choose what is wanted");
        }
        if (fields.has("circleMm") && !fields.has("focalMm")) {
            return place.member("circleMm").fault("goes with focalMm alone: take it out");
        }
        return fields.build(() -> new Asked(
                Stream.of(
                                model.get().<Wish>map(Wish.OfModel::new),
                                set.get().<Wish>map(Wish.OfSet::new),
                                unit.get().<Wish>map(Wish.OfUnit::new),
                                focal.get().<Wish>map(mm -> new Wish.Any(mm, circle.get())))
                        .flatMap(Optional::stream)
                        .findFirst()
                        .orElseThrow(),
                count.get(),
                off.get()));
    }

    public static Json.Obj write(PackageAsked asked) {
        Json.Members members = Json.object();
        write(members, asked);
        return members.build();
    }

    static void write(Json.Members members, PackageAsked asked) {
        members.put("schedule", CostingRequestWriter.schedule(asked.schedule()))
                .put(
                        "lines",
                        Json.list(asked.lines().stream().map(PackageJson::write).toList()))
                .put("insured", asked.insured());
        if (asked.off().value().signum() != 0) {
            members.put("discountPercent", Amounts.plain(asked.off()));
        }
        if (!asked.reason().isEmpty()) {
            members.put("discountReason", asked.reason());
        }
    }

    private static Json write(Asked asked) {
        Json.Members members = wish(asked.wish()).put("count", asked.count());
        if (asked.off().value().signum() != 0) {
            members.put("discountPercent", Amounts.plain(asked.off()));
        }
        return members.build();
    }

    /** What is wished for, as a line of a package says it. */
    public static Json.Obj write(Wish wish) {
        return wish(wish).build();
    }

    private static Json.Members wish(Wish wish) {
        Json.Members members = Json.object();
        return wish.fold(
                model -> members.put("model", model.model().number()),
                set -> members.put("set", set.set().number()),
                unit -> members.put("unit", unit.unit().number()),
                any -> any(members, any));
    }

    private static Json.Members any(Json.Members members, Wish.Any any) {
        members.put("focalMm", any.focalMm().toPlainString());
        any.circleMm().ifPresent(circle -> members.put("circleMm", circle.toPlainString()));
        return members;
    }
}
