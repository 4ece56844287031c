package dayglass.web.api.books;

import dayglass.base.Stored;
import dayglass.books.chart.Chart;
import dayglass.books.chart.ChartTable;
import dayglass.books.period.JobCalendars;
import dayglass.books.period.PeriodCalendar;
import dayglass.job.Job;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** {@code /api/jobs/{id}/cost-chart} and {@code /api/jobs/{id}/book-calendar}: there from the first, at version 0. */
public final class ChartApi {
    private static final String CHART = "/api/jobs/{id}/cost-chart";
    private static final String CALENDAR = "/api/jobs/{id}/book-calendar";

    private final BooksContext in;

    public ChartApi(BooksContext in) {
        this.in = in;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(CHART, ctx -> show(ctx, in.books().charts().of(in.job(ctx).id())));
        routes.put(CHART, this::bringIn);
        routes.get(
                CALENDAR,
                ctx -> showCalendar(
                        ctx, in.books().periods().calendars().of(in.job(ctx).id())));
        routes.put(CALENDAR, this::setCalendar);
    }

    private void bringIn(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Job.Id, Chart> current = in.books().charts().of(in.job(ctx).id());
        IfMatch ifMatch = IfMatch.of(ctx);
        String text = Requests.body(ctx, Fields.object(fields -> {
            Read<String> csv = fields.required("text", Readers.wholeText());
            return fields.build(csv::get);
        }));
        if (!ifMatch.matches(current.version())) {
            throw IfMatch.stale("The chart of this job is", current.version(), json(current));
        }
        List<Chart.CostCode> codes = Refusal.require(ChartTable.read(text.getBytes(StandardCharsets.UTF_8), "/text"));
        show(
                ctx,
                Refusal.require(in.books()
                        .charts()
                        .keep(new Stored<>(current.id(), current.version(), new Chart(current.id(), codes)))));
    }

    private static void show(Context ctx, Stored<Job.Id, Chart> chart) {
        Requests.onlyParameters(ctx);
        ctx.header("ETag", IfMatch.tag(chart.version()));
        Replies.json(ctx, json(chart));
    }

    private static Json.Obj json(Stored<Job.Id, Chart> chart) {
        return Json.object()
                .put("jobId", chart.id().number())
                .put("version", chart.version())
                .put(
                        "codes",
                        Json.list(chart.facts().codes().stream()
                                .map(each -> Json.object()
                                        .put("code", each.code())
                                        .put("name", each.name())
                                        .build())
                                .toList()))
                .build();
    }

    private void setCalendar(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Job.Id, JobCalendars.OfJob> current =
                in.books().periods().calendars().of(in.job(ctx).id());
        IfMatch ifMatch = IfMatch.of(ctx);
        PeriodCalendar calendar = Requests.body(ctx, calendar());
        if (!ifMatch.matches(current.version())) {
            throw IfMatch.stale("The calendar of this job is", current.version(), calendarJson(current));
        }
        showCalendar(
                ctx,
                Refusal.require(in.books()
                        .periods()
                        .calendars()
                        .keep(new Stored<>(
                                current.id(), current.version(), new JobCalendars.OfJob(current.id(), calendar)))));
    }

    /** Both left out means weeks. */
    public static Reader<PeriodCalendar> calendar() {
        return Fields.object(fields -> {
            Read<Optional<LocalDate>> first = fields.optional("firstDay", Readers.date());
            Read<List<LocalDate>> ends = fields.optional("ends", Readers.list(Readers.date()), List.of());
            if (first.isGood() && ends.isGood()) {
                check(fields, first.get(), ends.get());
            }
            return fields.build(() -> new PeriodCalendar(first.get(), ends.get()));
        });
    }

    private static void check(Fields fields, Optional<LocalDate> first, List<LocalDate> ends) {
        if (first.isPresent() == ends.isEmpty()) {
            fields.place()
                    .member(first.isPresent() ? "ends" : "firstDay")
                    .fault("is missing: a calendar of its own has a first day and the end of each period");
        }
        LocalDate before = first.map(day -> day.minusDays(1)).orElse(LocalDate.MIN);
        for (int at = 0; at < ends.size(); at++) {
            if (!ends.get(at).isAfter(before)) {
                fields.place().member("ends").entry(at).fault("is not after the day before it: put them in order");
                return;
            }
            before = ends.get(at);
        }
    }

    private static void showCalendar(Context ctx, Stored<Job.Id, JobCalendars.OfJob> calendar) {
        Requests.onlyParameters(ctx);
        ctx.header("ETag", IfMatch.tag(calendar.version()));
        Replies.json(ctx, calendarJson(calendar));
    }

    private static Json.Obj calendarJson(Stored<Job.Id, JobCalendars.OfJob> stored) {
        PeriodCalendar calendar = stored.facts().calendar();
        Json.Members members = Json.object()
                .put("jobId", stored.id().number())
                .put("version", stored.version())
                .put("weekly", calendar.isWeekly());
        calendar.firstDay().ifPresent(day -> members.put("firstDay", day.toString()));
        return members.putUnlessEmpty(
                        "ends",
                        calendar.ends().stream()
                                .map(day -> Json.text(day.toString()))
                                .toList())
                .build();
    }
}
