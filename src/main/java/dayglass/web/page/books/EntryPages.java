package dayglass.web.page.books;

import dayglass.base.Id;
import dayglass.base.Stored;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.job.Job;
import dayglass.web.api.books.EntryJson;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Entries as a list, one by itself, the form that posts one and the form that takes one back. */
public final class EntryPages {
    private static final int PAGE = 100;
    private static final List<String> FILTERS = List.of("kind", "costCode", "episode", "supplier", "from", "until");

    private final BooksPages in;

    EntryPages(BooksPages in) {
        this.in = in;
    }

    /** An entry in the list. */
    public record Row(
            long id,
            String date,
            String kind,
            String code,
            String episode,
            String supplier,
            String description,
            String net,
            String tax,
            String base,
            String note) {}

    void route(RoutesConfig routes) {
        routes.get("/books/{id}/entries", ctx -> list(ctx, Form.EMPTY));
        routes.post("/books/{id}/entries", this::post);
        routes.get("/books/entries/{id}", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/books/entries/{id}/reversal", "/books/entries/{id}", this::reverse);
    }

    private void list(Context ctx, Form form) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Optional<Entry.Id> after = Optional.ofNullable(ctx.queryParam("after"))
                .map(PathNumbers::of)
                .filter(number -> number.isPresent())
                .map(number -> new Entry.Id(number.getAsLong()));
        List<Posted> found = in.books.entries().list(which(ctx, job.id()), after, PAGE + 1);
        List<Posted> shown = found.subList(0, Math.min(PAGE, found.size()));
        Map<String, Object> model = BooksPages.model(
                job,
                form.values().isEmpty() ? Form.EMPTY.with("/date", in.today().toString()) : form);
        model.put("rows", shown.stream().map(EntryPages::row).toList());
        model.put("query", query(ctx));
        model.put("filter", filter(ctx));
        model.put("asked", asked(ctx));
        model.put(
                "layouts",
                Requests.all(in.plans.layouts()).stream()
                        .map(layout -> new Choice(
                                String.valueOf(layout.id().number()),
                                layout.facts().name()))
                        .toList());
        model.put(
                "next",
                found.size() > PAGE
                        ? "/books/" + job.id().number() + "/entries?" + query(ctx) + "after="
                                + shown.get(PAGE - 1).id().number()
                        : "");
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "entries.jte", model);
        } else {
            in.html.render(ctx, "entries.jte", model);
        }
    }

    private static Entries.Which which(Context ctx, Job.Id job) {
        return new Entries.Which(
                job,
                Optional.ofNullable(ctx.queryParam("kind")).flatMap(Kind::of),
                Optional.ofNullable(ctx.queryParam("costCode")),
                Optional.ofNullable(ctx.queryParam("episode")),
                Optional.ofNullable(ctx.queryParam("supplier")),
                day(ctx, "from"),
                day(ctx, "until"));
    }

    private static Optional<LocalDate> day(Context ctx, String name) {
        try {
            return Optional.ofNullable(ctx.queryParam(name)).map(LocalDate::parse);
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }

    private static String query(Context ctx) {
        StringBuilder query = new StringBuilder();
        for (String name : FILTERS) {
            String value = ctx.queryParam(name);
            if (value != null) {
                query.append(name)
                        .append('=')
                        .append(URLEncoder.encode(value, StandardCharsets.UTF_8))
                        .append('&');
            }
        }
        return query.toString();
    }

    /** What of the query a form must send again. */
    private static List<Choice> asked(Context ctx) {
        return FILTERS.stream()
                .filter(name -> ctx.queryParam(name) != null)
                .map(name -> new Choice(name, String.valueOf(ctx.queryParam(name))))
                .toList();
    }

    private static String filter(Context ctx) {
        List<String> said = new ArrayList<>();
        Map<String, String> names = Map.of("costCode", "code");
        for (String name : FILTERS) {
            String value = ctx.queryParam(name);
            if (value != null) {
                said.add(names.getOrDefault(name, name) + " " + (value.isEmpty() ? "(none)" : value));
            }
        }
        return String.join(", ", said);
    }

    private static Row row(Posted posted) {
        Entry entry = posted.entry();
        return new Row(
                posted.id().number(),
                Words.date(entry.date()),
                entry.kind().word(),
                entry.coding().costCode(),
                entry.coding().episode(),
                entry.coding().supplier(),
                entry.item().description(),
                Words.money(entry.amounts().net()),
                Words.amount(entry.amounts().tax()),
                Words.money(entry.amounts().baseNet()),
                entry.papers().note());
    }

    private void post(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> BooksPages.read(EntryJson.reader(job.id(), job.facts().currency()), json(form))
                        .then(typed -> in.books.post().postSplit(typed.entry(), typed.parts(), typed.overPeriods()))
                        .map(EntryPages::first),
                problem -> list(ctx, form.with(problem)));
    }

    private static String first(List<Posted> posted) {
        return "/books/entries/" + posted.get(0).id().number();
    }

    /** Shares and the tick for periods are no texts in the contract. */
    private static Json json(Form form) {
        Json.Members entry = Json.object();
        ((Json.Obj) FormJson.read(FormJson.compact(form))).members().forEach((name, json) -> {
            if (name.equals("parts") && json instanceof Json.Arr parts) {
                entry.put(
                        name,
                        Json.list(parts.entries().stream().map(EntryPages::part).toList()));
            } else if (!name.equals("overPeriods")) {
                entry.put(name, json);
            }
        });
        return entry.put("overPeriods", form.has("/overPeriods")).build();
    }

    private static Json part(Json json) {
        Json.Members part = Json.object();
        ((Json.Obj) json)
                .members()
                .forEach((name, value) -> part.put(
                        name,
                        name.equals("weight")
                                        && value instanceof Json.Text text
                                        && text.value().matches("[1-9][0-9]{0,8}")
                                ? new Json.Num(text.value())
                                : value));
        return part.build();
    }

    private Posted find(Context ctx) {
        return in.books
                .entries()
                .find(new Entry.Id(Requests.number(ctx, "id")))
                .orElseThrow(() -> Requests.missing(ctx));
    }

    private void show(Context ctx, Form form) {
        Posted posted = find(ctx);
        Entry entry = posted.entry();
        Stored<Job.Id, Job> job = in.books.house().jobs().find(entry.job()).orElseThrow();
        Map<String, Object> model = BooksPages.model(
                job,
                form.values().isEmpty() ? Form.EMPTY.with("/date", in.today().toString()) : form);
        model.put("row", row(posted));
        model.put("facts", facts(posted));
        model.put("reversed", !in.books.entries().reversed(List.of(posted.id())).isEmpty());
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "entry.jte", model);
        } else {
            in.html.render(ctx, "entry.jte", model);
        }
    }

    /** A fact on the page of an entry; address is empty where it leads nowhere. */
    public record Fact(String name, String text, String address) {}

    private List<Fact> facts(Posted posted) {
        Entry entry = posted.entry();
        List<Fact> facts = new ArrayList<>();
        add(facts, "service", Words.dates(entry.service()));
        add(facts, "cost code", entry.coding().costCode());
        add(facts, "episode", entry.coding().episode());
        add(facts, "supplier", entry.coding().supplier());
        add(facts, "tag", entry.item().tag());
        add(facts, "serial", entry.item().serial());
        add(facts, "net", Words.money(entry.amounts().net()));
        add(facts, "tax", Words.money(entry.amounts().tax()) + " " + entry.sum().taxCode());
        add(facts, "gross", Words.money(entry.amounts().gross()));
        add(facts, "net in the job's currency", Words.money(entry.amounts().baseNet()));
        add(
                facts,
                "exchange",
                entry.sum().exchange().rate().toPlainString() + ", "
                        + entry.sum().exchange().source() + ", "
                        + Words.date(entry.sum().exchange().on()));
        add(facts, "purchase order", entry.papers().purchaseOrder());
        add(facts, "invoice", entry.papers().invoice());
        add(facts, "why", entry.papers().note());
        link(facts, "takes back entry", entry.links().reverses().map(Id::number), "/books/entries/");
        link(facts, "draws on the order", entry.links().commitment().map(Id::number), "/books/entries/");
        link(facts, "comes from costing", entry.links().costing(), "/costings/");
        add(facts, "posted with entry", String.valueOf(posted.posting().number()));
        add(
                facts,
                "entered",
                Words.moment(posted.at(), in.zone()) + " by "
                        + in.household
                                .people()
                                .find(posted.by())
                                .map(person -> person.facts().name())
                                .orElse("person " + posted.by().number()));
        add(facts, "hash", posted.hash());
        return facts;
    }

    private static void add(List<Fact> facts, String name, String text) {
        if (!text.isBlank()) {
            facts.add(new Fact(name, text, ""));
        }
    }

    private static void link(List<Fact> facts, String name, Optional<Long> to, String address) {
        to.ifPresent(id -> facts.add(new Fact(name, String.valueOf(id), address + id)));
    }

    private record Reversal(LocalDate date, String reason) {}

    private static final Reader<Reversal> REVERSAL = Fields.object(fields -> {
        Read<LocalDate> date = fields.required("date", Readers.date());
        Read<String> reason = fields.required("reason", Readers.text(1_000));
        return fields.build(() -> new Reversal(date.get(), reason.get()));
    });

    private void reverse(Context ctx) {
        Posted posted = find(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> BooksPages.read(REVERSAL, FormJson.read(form))
                        .then(said ->
                                in.books.post().reverse(posted.id(), said.date(), said.reason(), form.has("whole")))
                        .map(EntryPages::first),
                problem -> show(ctx, form.with(problem)));
    }
}
