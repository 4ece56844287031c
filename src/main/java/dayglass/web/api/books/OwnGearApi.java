package dayglass.web.api.books;

import dayglass.base.Currency;
import dayglass.base.Id;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.books.entry.Posted;
import dayglass.books.gear.BringIn;
import dayglass.books.gear.Gear;
import dayglass.books.gear.GearBooks;
import dayglass.books.gear.GearEntries;
import dayglass.books.gear.GearEntries.Deed;
import dayglass.job.Job;
import dayglass.shelf.GearJson;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BiFunction;

/** {@code /api/jobs/{id}/gear} and {@code /api/gear/{id}}, with what is posted for it. */
public final class OwnGearApi {
    private static final String OF_JOB = "/api/jobs/{id}/gear";
    private static final String PATH = "/api/gear/{id}";

    private final BooksContext in;
    private final GearBooks gear;
    private final BringIn bringIn;

    public OwnGearApi(BooksContext in, BringIn bringIn) {
        this.in = in;
        this.gear = bringIn.gear();
        this.bringIn = bringIn;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(OF_JOB, this::list);
        routes.post(OF_JOB, this::add);
        routes.post(OF_JOB + "/depreciation", in.once().apply(this::writeOff));
        routes.get(OF_JOB + "/to-bring-in", this::toBringIn);
        routes.post(OF_JOB + "/to-bring-in", in.once().apply(this::bringIn));
        routes.get(PATH, this::read);
        routes.delete(PATH, this::remove);
        routes.post(PATH + "/letting", in.once().apply(ctx -> enter(ctx, gear::let)));
        routes.post(PATH + "/service", in.once().apply(ctx -> enter(ctx, gear::service)));
        routes.post(PATH + "/disposal", in.once().apply(ctx -> enter(ctx, gear::dispose)));
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx);
        List<Json> items =
                gear.gear().of(in.job(ctx).id()).stream().<Json>map(this::json).toList();
        Replies.json(ctx, Json.object().put("items", Json.list(items)).build());
    }

    private void add(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Job.Id, Job> job = in.job(ctx);
        Gear facts = Requests.body(ctx, GearJson.reader(job.id(), job.facts().currency(), gear.units()));
        Stored<Gear.Id, Gear> stored = Refusal.require(gear.gear().add(facts));
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.created(ctx, "/api/gear/" + stored.id().number(), json(stored));
    }

    private Stored<Gear.Id, Gear> find(Context ctx) {
        return Requests.find(ctx, gear.gear(), Gear.Id::new, "gear");
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Gear.Id, Gear> stored = find(ctx);
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.json(ctx, json(stored));
    }

    private void remove(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Gear.Id, Gear> stored = find(ctx);
        if (!IfMatch.of(ctx).matches(stored.version())) {
            throw IfMatch.stale("This gear is", stored.version(), json(stored));
        }
        Refusal.require(gear.gear().remove(stored.id(), stored.version()));
        ctx.status(204);
    }

    private Json.Obj json(Stored<Gear.Id, Gear> stored) {
        GearEntries entries = gear.gear().entries(stored);
        Json.Members members = Json.object()
                .put("id", stored.id().number())
                .put("version", stored.version())
                .put("jobId", stored.facts().job().number());
        GearJson.write(members, stored.facts());
        return members.put("currency", stored.facts().price().currency().code())
                .put("gone", entries.gone())
                .put("bookValue", entries.bookValue().amount())
                .put("depreciated", entries.sum(Deed.DEPRECIATION).amount())
                .put("let", entries.sum(Deed.LETTING).times(-1).amount())
                .put("serviced", entries.sum(Deed.SERVICE).amount())
                .put(
                        "entries",
                        Json.list(entries.lines().stream().map(OwnGearApi::json).toList()))
                .build();
    }

    private static Json json(GearEntries.Line line) {
        Json.Members members = Json.object()
                .put("for", line.deed().word())
                .put("entry", line.posted().id().number());
        line.source()
                .ifPresent(source -> members.put("from", source.origin().word()).put("number", source.number()));
        return members.build();
    }

    private void writeOff(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = in.job(ctx).id();
        created(ctx, gear.writeOff(job, through(ctx)));
    }

    private static LocalDate through(Context ctx) {
        return Requests.body(ctx, Fields.object(fields -> {
            Read<LocalDate> day = fields.required("through", Readers.date());
            return fields.build(day::get);
        }));
    }

    private void toBringIn(Context ctx) {
        Requests.onlyParameters(ctx, "through");
        Job.Id job = in.job(ctx).id();
        LocalDate through = Requests.day(ctx, "through")
                .orElseThrow(() -> Requests.badParameter("through", "it is needed: a day, as 2027-04-11"));
        List<Json> items =
                bringIn.missing(job, through).stream().<Json>map(this::json).toList();
        Replies.json(
                ctx,
                Json.object()
                        .put("through", through.toString())
                        .put("items", Json.list(items))
                        .build());
    }

    private Json json(BringIn.Item item) {
        return Json.object()
                .put("gearId", item.gear().id().number())
                .put("unitId", item.gear().facts().unit().number())
                .put("for", item.source().origin().deed().word())
                .put("from", item.source().origin().word())
                .put("number", item.source().number())
                .put("day", item.day().toString())
                .put("description", item.description())
                .put("net", item.missing().amount())
                .put("currency", item.missing().currency().code())
                .put("postable", item.postable())
                .build();
    }

    private void bringIn(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = in.job(ctx).id();
        created(ctx, bringIn.bringIn(job, through(ctx)));
    }

    private void enter(Context ctx, BiFunction<Gear.Id, GearBooks.Paper, Outcome<List<Posted>>> act) {
        Requests.onlyParameters(ctx);
        Stored<Gear.Id, Gear> stored = find(ctx);
        GearBooks.Paper paper = Requests.body(ctx, paper(stored.facts().price().currency()));
        created(ctx, act.apply(stored.id(), paper));
    }

    /** What was had or paid; nothing, where gear goes for nothing. */
    public static Reader<GearBooks.Paper> paper(Currency currency) {
        return Fields.object(fields -> {
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<Money> net = fields.required("net", Decimals.money(Read.good(currency)));
            Read<String> with = fields.optional("with", Readers.name(), "");
            Read<String> what = fields.required("description", Readers.name());
            return fields.build(() -> new GearBooks.Paper(date.get(), net.get(), with.get(), what.get()));
        });
    }

    private void created(Context ctx, Outcome<List<Posted>> outcome) {
        List<Posted> posted = Refusal.require(outcome);
        Id first = posted.get(0).id();
        Replies.created(ctx, "/api/book-entries/" + first.number(), EntryJson.list(posted, in.zone()));
    }
}
