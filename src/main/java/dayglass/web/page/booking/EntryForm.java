package dayglass.web.page.booking;

import dayglass.base.Outcome;
import dayglass.house.House;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.BenchWork;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Stay;
import dayglass.web.api.inventory.booking.OccupationJson;
import dayglass.web.page.form.Form;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** The form of a booking, a bench visit or an absence: the contract's JSON by the pointers of its fields. */
final class EntryForm {
    static final String OUT = "/out";
    static final String BACK = "/back";
    static final String SUBJECT = "/subject";
    private static final String BENCH = "/bench/";
    private static final List<String> WORK = List.of("findings", "work", "parts");

    private EntryForm() {}

    static Form of(Occupation facts, long version, House house) {
        Form form = ClockField.with(Form.EMPTY, OUT, facts.stay().out(), house.zone());
        form = ClockField.with(form, BACK, facts.stay().back(), house.zone())
                .with(SUBJECT, facts.subject())
                .with("version", String.valueOf(version));
        BenchWork work = facts.bench().orElse(BenchWork.NOT_YET);
        return form.with(BENCH + "findings", work.findings())
                .with(BENCH + "work", work.work())
                .with(BENCH + "parts", work.parts())
                .with(
                        BENCH + "cost/amount",
                        work.cost().map(cost -> cost.amount()).orElse(""))
                .with(
                        BENCH + "cost/currency",
                        work.cost()
                                .map(cost -> cost.currency().code())
                                .orElse(house.currency().code()))
                .with(BENCH + "done", work.done() ? "yes" : "");
    }

    /** What is to change, read as a change over REST is. */
    static Outcome<BookUnits.Entry> read(Form form, Occupation before, House house) {
        Stay stay = before.stay();
        ZoneId zone = house.zone();
        Json.Members members = Json.object();
        put(members, "out", ClockField.text(form, OUT, zone, stay.out()));
        put(members, "back", ClockField.text(form, BACK, zone, stay.back()));
        return read(OccupationJson.one(before.kind(), house), rest(members, form, before.kind()));
    }

    /** What is to be entered for some units. */
    static Outcome<OccupationJson.New> read(Form form, List<String> units, Kind kind, House house) {
        Json.Members members = Json.object()
                .put("unitIds", Json.list(units.stream().map(Json.Num::new).toList()));
        put(members, "out", ClockField.text(form, OUT, house.zone()));
        put(members, "back", ClockField.text(form, BACK, house.zone()));
        return read(OccupationJson.several(kind, house), rest(members, form, kind));
    }

    static <T> Outcome<T> read(Reader<T> reader, Json json) {
        return reader.readAt("", json, Listener.PERSON).outcome();
    }

    private static Json rest(Json.Members members, Form form, Kind kind) {
        put(members, "subject", form.value(SUBJECT).strip());
        bench(form).filter(work -> kind == Kind.BENCH).ifPresent(work -> members.put("bench", work));
        return members.build();
    }

    private static Optional<Json> bench(Form form) {
        if (form.values().keySet().stream().noneMatch(name -> name.startsWith(BENCH))) {
            return Optional.empty();
        }
        Json.Members members = Json.object();
        WORK.forEach(name -> put(members, name, form.value(BENCH + name).strip()));
        if (form.has(BENCH + "cost/amount")) {
            Json.Members cost = Json.object();
            put(cost, "amount", form.value(BENCH + "cost/amount").strip());
            put(cost, "currency", form.value(BENCH + "cost/currency").strip());
            members.put("cost", cost.build());
        }
        return Optional.of(members.put("done", form.has(BENCH + "done")).build());
    }

    /** A blank field is left out, so that it is asked for where it is needed. */
    static void put(Json.Members members, String name, String text) {
        if (!text.isEmpty()) {
            members.put(name, text);
        }
    }
}
