package dayglass.web.page.books;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.books.entry.Posted;
import dayglass.books.gear.Gear;
import dayglass.books.gear.GearBooks;
import dayglass.books.gear.GearEntries;
import dayglass.books.gear.GearEntries.Deed;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.shelf.GearJson;
import dayglass.web.api.books.OwnGearApi;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.Readers;
import dayglass.wire.verdict.PublishedTables;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** Gear of the house's own in a job's books: what it stands for, writing it off, and what it earns, costs and brings. */
public final class GearPages {
    private final BooksPages in;
    private final GearBooks gear;

    GearPages(BooksPages in, GearBooks gear) {
        this.in = in;
        this.gear = gear;
    }

    /** Gear in the list, or at the head of its own page. */
    public record Row(
            long id,
            String tag,
            String price,
            String inService,
            String method,
            String depreciated,
            String bookValue,
            String let,
            String serviced,
            boolean gone) {}

    /** An entry of gear. */
    public record Line(long entry, String date, String deed, String what, String amount) {}

    void route(RoutesConfig routes) {
        routes.get("/books/gear/{id}", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/books/gear/{id}/letting", "/books/gear/{id}", ctx -> enter(ctx, gear::let));
        FormRoutes.take(routes, "/books/gear/{id}/service", "/books/gear/{id}", ctx -> enter(ctx, gear::service));
        FormRoutes.take(routes, "/books/gear/{id}/disposal", "/books/gear/{id}", ctx -> enter(ctx, gear::dispose));
        routes.get("/books/{id}/gear", ctx -> list(ctx, Form.EMPTY));
        routes.post("/books/{id}/gear", this::add);
        FormRoutes.take(routes, "/books/{id}/depreciation", "/books/{id}/gear", this::writeOff);
    }

    private void list(Context ctx, Form form) {
        Stored<Job.Id, Job> job = in.job(ctx);
        List<Stored<Gear.Id, Gear>> all = gear.gear().of(job.id());
        Map<String, Object> model = BooksPages.model(
                job,
                form.values().isEmpty() ? Form.EMPTY.with("/through", in.today().toString()) : form);
        model.put("rows", all.stream().map(this::row).toList());
        model.put("units", units(all));
        model.put("tables", tables());
        model.put("currency", job.facts().currency().code());
        render(ctx, form, "gear.jte", model);
    }

    private void render(Context ctx, Form form, String template, Map<String, Object> model) {
        if (form.faulty()) {
            in.html.renderFaulty(ctx, template, model);
        } else {
            in.html.render(ctx, template, model);
        }
    }

    /** Units of the house's own that are not in these books. */
    private List<Choice> units(List<Stored<Gear.Id, Gear>> all) {
        List<Unit.Id> there = all.stream().map(each -> each.facts().unit()).toList();
        return Requests.all(gear.units()).stream()
                .filter(unit -> unit.facts().holding().fold(owned -> true, rented -> false, lent -> false))
                .filter(unit -> !there.contains(unit.id()))
                .map(unit -> new Choice(
                        String.valueOf(unit.id().number()), unit.facts().tag()))
                .toList();
    }

    private static List<Choice> tables() {
        return Stream.concat(
                        Stream.of(new Choice("", "none")),
                        PublishedTables.KNOWN.byName().keySet().stream().map(name -> new Choice(name, name)))
                .toList();
    }

    private Row row(Stored<Gear.Id, Gear> stored) {
        Gear facts = stored.facts();
        GearEntries entries = gear.gear().entries(stored);
        return new Row(
                stored.id().number(),
                gear.units().find(facts.unit()).map(unit -> unit.facts().tag()).orElse(""),
                Words.amount(facts.price()),
                Words.date(facts.inService()),
                facts.writtenOff().method(),
                Words.amount(entries.sum(Deed.DEPRECIATION)),
                Words.amount(entries.bookValue()),
                Words.amount(entries.sum(Deed.LETTING).times(-1)),
                Words.amount(entries.sum(Deed.SERVICE)),
                entries.gone());
    }

    private void add(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> BooksPages.read(
                                GearJson.reader(job.id(), job.facts().currency(), gear.units()), FormJson.read(form))
                        .then(gear.gear()::add)
                        .map(stored -> "/books/gear/" + stored.id().number()),
                problem -> list(ctx, form.with(problem)));
    }

    private void writeOff(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> Readers.date()
                        .readAt("/through", Json.text(form.value("/through")))
                        .outcome()
                        .then(day -> gear.writeOff(job.id(), day))
                        .map(posted -> "/books/" + job.id().number() + "/gear"),
                problem -> list(ctx, form.with(problem)));
    }

    private Stored<Gear.Id, Gear> find(Context ctx) {
        return Requests.find(ctx, gear.gear(), Gear.Id::new);
    }

    private void show(Context ctx, Form form) {
        Stored<Gear.Id, Gear> stored = find(ctx);
        Stored<Job.Id, Job> job =
                in.books.house().jobs().find(stored.facts().job()).orElseThrow();
        Map<String, Object> model = BooksPages.model(
                job,
                form.values().isEmpty() ? Form.EMPTY.with("/date", in.today().toString()) : form);
        model.put("row", row(stored));
        model.put("currency", job.facts().currency().code());
        List<Line> lines = new ArrayList<>();
        gear.gear().entries(stored).lines().forEach(line -> lines.add(line(line)));
        model.put("lines", lines);
        render(ctx, form, "gearunit.jte", model);
    }

    private static Line line(GearEntries.Line line) {
        return new Line(
                line.posted().id().number(),
                Words.date(line.posted().entry().date()),
                line.deed().word(),
                line.posted().entry().item().description(),
                Words.amount(line.posted().entry().amounts().baseNet()));
    }

    private void enter(Context ctx, BiFunction<Gear.Id, GearBooks.Paper, Outcome<List<Posted>>> act) {
        Stored<Gear.Id, Gear> stored = find(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> BooksPages.read(OwnGearApi.paper(stored.facts().price().currency()), FormJson.read(form))
                        .then(paper -> act.apply(stored.id(), paper))
                        .map(posted -> "/books/gear/" + stored.id().number()),
                problem -> show(ctx, form.with(problem)));
    }
}
