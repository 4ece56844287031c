package dayglass.web.api.inventory.booking;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.shelf.MoneyJson;
import dayglass.web.api.house.Moments;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Bookings, bench visits and absences as JSON. */
public final class OccupationJson {
    private static final int MOST_WORDS = 4_000;
    private static final int MOST_REASON = 1_000;

    private OccupationJson() {}

    /** What is to be entered, for one unit or several. */
    public record New(List<Unit.Id> units, BookUnits.Entry entry) {
        public New {
            units = List.copyOf(units);
        }
    }

    public static Reader<New> several(Kind kind, House house) {
        return Fields.object(fields -> {
            Read<List<Unit.Id>> units =
                    fields.required("unitIds", Readers.notEmpty(Readers.distinct(Ids.id(Unit.Id::new))));
            Read<BookUnits.Entry> entry = entry(fields, kind, house);
            return fields.build(() -> new New(units.get(), entry.get()));
        });
    }

    public static Reader<BookUnits.Entry> one(Kind kind, House house) {
        return Fields.object(fields -> {
            Read<BookUnits.Entry> entry = entry(fields, kind, house);
            return fields.build(entry::get);
        });
    }

    private static Read<BookUnits.Entry> entry(Fields fields, Kind kind, House house) {
        Read<TimesReader.Times> times = TimesReader.read(fields, house);
        Read<String> subject = fields.required("subject", Readers.name());
        Read<Optional<BenchWork>> bench = kind == Kind.BENCH
                ? fields.optional("bench", Fields.object(OccupationJson::bench), BenchWork.NOT_YET)
                        .map(Optional::of)
                : Read.good(Optional.empty());
        return times.isGood() && subject.isGood() && bench.isGood()
                ? Read.good(
                        new BookUnits.Entry(kind, times.get().out(), times.get().back(), subject.get(), bench.get()))
                : Read.bad();
    }

    private static Read<BenchWork> bench(Fields fields) {
        Read<String> findings = fields.optional("findings", Readers.prose(MOST_WORDS), "");
        Read<String> work = fields.optional("work", Readers.prose(MOST_WORDS), "");
        Read<String> parts = fields.optional("parts", Readers.prose(MOST_WORDS), "");
        Read<Optional<Money>> cost = fields.optional("cost", MoneyJson.money());
        Read<Boolean> done = fields.optional("done", Readers.yesOrNo(), false);
        return fields.build(() -> new BenchWork(findings.get(), work.get(), parts.get(), cost.get(), done.get()));
    }

    /**
     * A unit's going out or coming back.
     *
     * @param at now, where nothing is said
     * @param reason why it goes out in spite of what stands against it
     */
    public record Handling(Optional<Instant> at, Optional<String> reason) {}

    public static Reader<Handling> goingOut(ZoneId zone) {
        return handling(zone, fields -> fields.optional("override", Readers.text(MOST_REASON)));
    }

    public static Reader<Handling> comingBack(ZoneId zone) {
        return handling(zone, fields -> Read.good(Optional.empty()));
    }

    private static Reader<Handling> handling(ZoneId zone, Function<Fields, Read<Optional<String>>> reason) {
        return Fields.object(fields -> {
            Read<Optional<Instant>> at = fields.optional("at", MomentReader.moment(zone));
            Read<Optional<String>> why = reason.apply(fields);
            return fields.build(() -> new Handling(at.get(), why.get()));
        });
    }

    static Json.Obj write(Stored<Occupation.Id, Occupation> stored, ZoneId zone) {
        return members(stored, zone).build();
    }

    /** With what was overridden when it went out. */
    static Json.Obj write(
            Stored<Occupation.Id, Occupation> stored, List<HandOver.KeptOverride> overrides, ZoneId zone) {
        return members(stored, zone)
                .putUnlessEmpty(
                        "overrides",
                        overrides.stream()
                                .map(each -> Json.object()
                                        .put("at", Moments.text(each.at(), zone))
                                        .put("personId", each.by().number())
                                        .put("obstacles", each.obstacles())
                                        .put("reason", each.reason())
                                        .build())
                                .toList())
                .build();
    }

    private static Json.Members members(Stored<Occupation.Id, Occupation> stored, ZoneId zone) {
        Occupation facts = stored.facts();
        Json.Members members = Json.object()
                .put("id", stored.id().number())
                .put("version", stored.version())
                .put("kind", facts.kind().word())
                .put("unitId", facts.unit().number())
                .put("out", Moments.text(facts.stay().out(), zone))
                .put("back", Moments.text(facts.stay().back(), zone))
                .put("freeAt", Moments.text(facts.stay().freeAt(), zone))
                .put("subject", facts.subject())
                .put("cancelled", facts.cancelled());
        moment(members, "wentOut", facts.handling().wentOut(), zone);
        moment(members, "cameBack", facts.handling().cameBack(), zone);
        members.put("enteredBy", facts.record().by().number())
                .put("enteredAt", Moments.text(facts.record().at(), zone));
        facts.bench().ifPresent(bench -> members.put("bench", bench(bench)));
        return members;
    }

    private static void moment(Json.Members members, String name, Optional<Instant> moment, ZoneId zone) {
        moment.ifPresent(at -> members.put(name, Moments.text(at, zone)));
    }

    private static Json bench(BenchWork work) {
        Json.Members members = Json.object();
        text(members, "findings", work.findings());
        text(members, "work", work.work());
        text(members, "parts", work.parts());
        work.cost().ifPresent(cost -> members.put("cost", MoneyJson.write(cost)));
        return members.put("done", work.done()).build();
    }

    private static void text(Json.Members members, String name, String text) {
        if (!text.isEmpty()) {
            members.put(name, text);
        }
    }
}
