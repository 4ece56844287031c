package dayglass.web.page.books;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.books.chart.Chart;
import dayglass.books.chart.ChartTable;
import dayglass.books.period.JobCalendars;
import dayglass.books.period.Period;
import dayglass.books.period.PeriodAct;
import dayglass.books.post.ClosePeriods;
import dayglass.job.Job;
import dayglass.web.api.books.ChartApi;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import dayglass.wire.Json;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is closed, closing the next period, opening the last one again, and the chart. */
public final class PeriodPage {
    private static final int MOST_REASON = 1_000;

    private final BooksPages in;

    PeriodPage(BooksPages in) {
        this.in = in;
    }

    /** A close or a reopening. */
    public record Row(String deed, String period, String when, String who, String reason, String head) {}

    void route(RoutesConfig routes) {
        routes.get("/books/{id}/periods", ctx -> show(ctx, Form.EMPTY));
        FormRoutes.take(routes, "/books/{id}/close", "/books/{id}/periods", this::close);
        FormRoutes.take(routes, "/books/{id}/reopen", "/books/{id}/periods", this::reopen);
        FormRoutes.take(routes, "/books/{id}/calendar", "/books/{id}/periods", this::calendar);
        FormRoutes.take(routes, "/books/{id}/chart", "/books/{id}/periods", this::chart);
    }

    private void show(Context ctx, Form form) {
        Stored<Job.Id, Job> job = in.job(ctx);
        ClosePeriods close = in.books.close();
        Stored<Job.Id, Chart> chart = in.books.charts().of(job.id());
        Map<String, Object> model = BooksPages.model(job, form);
        model.put(
                "closedThrough", close.closedThrough(job.id()).map(Words::date).orElse(""));
        Optional<Period> following = close.next(job.id());
        model.put(
                "next",
                following
                        .map(next ->
                                next.name() + ", " + Words.date(next.firstDay()) + " to " + Words.date(next.lastDay()))
                        .orElse(""));
        model.put("none", following.isPresent() ? "" : close.whyNone(job.id()));
        model.put("nextDay", following.map(next -> next.lastDay().toString()).orElse(""));
        model.put(
                "rows",
                in.books.periods().acts().of(job.id()).stream().map(this::row).toList());
        Stored<Job.Id, JobCalendars.OfJob> calendar =
                in.books.periods().calendars().of(job.id());
        model.put("firstDay", said(calendar.facts().calendar().firstDay().stream()));
        model.put("ends", said(calendar.facts().calendar().ends().stream()));
        model.put("calendarVersion", calendar.version());
        model.put("codes", chart.facts().codes());
        model.put("chartVersion", chart.version());
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "periods.jte", model);
        } else {
            in.html.render(ctx, "periods.jte", model);
        }
    }

    private Row row(PeriodAct.Kept kept) {
        return new Row(
                kept.act().deed().word(),
                Words.date(kept.act().period().firstDay()) + " to "
                        + Words.date(kept.act().period().lastDay()),
                Words.moment(kept.at(), in.zone()),
                in.household
                        .people()
                        .find(kept.by())
                        .map(person -> person.facts().name())
                        .orElse(""),
                kept.act().reason(),
                kept.act().head().entry() + ": " + kept.act().head().hash().substring(0, 12));
    }

    private void close(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> BooksPages.read(Readers.date(), Json.text(form.value("lastDay")))
                        .then(day -> in.books.close().close(job.id(), day))
                        .map(act -> page(job)),
                problem -> show(ctx, form.with(problem)));
    }

    private void reopen(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        Outcome<String> reason = Readers.text(MOST_REASON)
                .readAt("/reason", Json.text(form.value("/reason")))
                .outcome();
        in.once(
                ctx,
                form,
                () -> reason.then(said -> in.books.close().reopen(job.id(), said))
                        .map(act -> page(job)),
                problem -> show(ctx, form.with(problem)));
    }

    private static String page(Stored<Job.Id, Job> job) {
        return "/books/" + job.id().number() + "/periods";
    }

    private static String said(Stream<LocalDate> days) {
        return days.map(LocalDate::toString).collect(Collectors.joining("\n"));
    }

    /** Both fields left empty mean weeks. */
    private void calendar(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        Json.Members calendar = Json.object();
        if (form.has("/firstDay")) {
            calendar.put("firstDay", form.value("/firstDay").strip());
        }
        if (form.has("/ends")) {
            calendar.put(
                    "ends",
                    Json.texts(form.value("/ends")
                            .lines()
                            .map(String::strip)
                            .filter(line -> !line.isEmpty())
                            .toList()));
        }
        finish(
                ctx,
                form,
                BooksPages.read(ChartApi.calendar(), calendar.build())
                        .then(read -> in.books
                                .periods()
                                .calendars()
                                .keep(new Stored<>(
                                        job.id(), Requests.version(form), new JobCalendars.OfJob(job.id(), read)))));
    }

    private void chart(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form sent = Requests.form(ctx);
        byte[] bytes = Requests.fileOrText(ctx, sent, "file", "/text");
        Form form = sent.with("/text", new String(bytes, StandardCharsets.UTF_8));
        Outcome<List<Chart.CostCode>> codes = ChartTable.read(bytes, "/text");
        finish(
                ctx,
                form,
                codes.then(read -> in.books
                        .charts()
                        .keep(new Stored<>(job.id(), Requests.version(form), new Chart(job.id(), read)))));
    }

    private void finish(Context ctx, Form form, Outcome<?> outcome) {
        outcome.fold(
                done -> {
                    Requests.see(ctx, "/books/" + ctx.pathParam("id") + "/periods");
                    return true;
                },
                problem -> {
                    show(ctx, form.with(problem));
                    return false;
                });
    }
}
