package dayglass.web.page.books;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.books.gear.BringIn;
import dayglass.job.Job;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the desk let and the bench did with own gear and is not in the books: shown first, then posted. */
public final class BringInPage {
    private static final String PATH = "/books/{id}/bring-in";

    private final BooksPages in;
    private final BringIn bringIn;

    BringInPage(BooksPages in, BringIn bringIn) {
        this.in = in;
        this.bringIn = bringIn;
    }

    /** What would be posted. */
    public record Row(long gear, String tag, String deed, String day, String what, String amount, boolean postable) {}

    void route(RoutesConfig routes) {
        routes.get(
                PATH,
                ctx -> show(
                        ctx,
                        Form.EMPTY.with(
                                "/through",
                                Optional.ofNullable(ctx.queryParam("/through"))
                                        .orElseGet(() -> in.today().toString()))));
        routes.post(PATH, this::post);
    }

    private static Outcome<LocalDate> through(Form form) {
        return Readers.date()
                .readAt("/through", Json.text(form.value("/through")))
                .outcome();
    }

    private void show(Context ctx, Form asked) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Outcome<LocalDate> through = through(asked);
        Form form = through instanceof Outcome.Refused<LocalDate> refused ? asked.with(refused.problem()) : asked;
        List<BringIn.Item> items =
                through instanceof Outcome.Done<LocalDate> day ? bringIn.missing(job.id(), day.value()) : List.of();
        Map<String, Object> model = BooksPages.model(job, form);
        model.put("currency", job.facts().currency().code());
        model.put("rows", items.stream().map(this::row).toList());
        model.put("postable", items.stream().anyMatch(BringIn.Item::postable));
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "bringin.jte", model);
        } else {
            in.html.render(ctx, "bringin.jte", model);
        }
    }

    private Row row(BringIn.Item item) {
        return new Row(
                item.gear().id().number(),
                bringIn.gear()
                        .units()
                        .find(item.gear().facts().unit())
                        .map(unit -> unit.facts().tag())
                        .orElse(""),
                item.source().origin().deed().word(),
                Words.date(item.day()),
                item.description(),
                item.postable() ? Words.amount(item.missing()) : Words.money(item.missing()),
                item.postable());
    }

    private void post(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> through(form)
                        .then(day -> bringIn.bringIn(job.id(), day))
                        .map(posted -> "/books/" + job.id().number() + "/gear"),
                problem -> show(ctx, form.with(problem)));
    }
}
