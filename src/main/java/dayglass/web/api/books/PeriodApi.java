package dayglass.web.api.books;

import dayglass.books.period.Period;
import dayglass.books.period.PeriodAct;
import dayglass.books.post.ClosePeriods;
import dayglass.job.Job;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.house.Moments;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;

/** {@code /api/jobs/{id}/periods}, with closing and opening again. */
public final class PeriodApi {
    private static final String PATH = "/api/jobs/{id}/periods";

    private final BooksContext in;

    public PeriodApi(BooksContext in) {
        this.in = in;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(PATH, this::list);
        routes.post(PATH + "/close", in.once().apply(this::close));
        routes.post(PATH + "/reopen", in.once().apply(this::reopen));
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx);
        Replies.json(ctx, json(in.job(ctx).id()));
    }

    private Json json(Job.Id job) {
        ClosePeriods close = in.books().close();
        Json.Members members = Json.object().put("jobId", job.number());
        close.closedThrough(job).ifPresent(day -> members.put("closedThrough", day.toString()));
        close.next(job).ifPresent(next -> members.put("next", json(next)));
        return members.put(
                        "acts",
                        Json.list(in.books().periods().acts().of(job).stream()
                                .map(this::json)
                                .toList()))
                .build();
    }

    private static Json json(Period period) {
        return Json.object()
                .put("name", period.name())
                .put("firstDay", period.firstDay().toString())
                .put("lastDay", period.lastDay().toString())
                .build();
    }

    private Json json(PeriodAct.Kept kept) {
        Json.Members members = Json.object()
                .put("id", kept.id().number())
                .put("deed", kept.act().deed().word())
                .put("firstDay", kept.act().period().firstDay().toString())
                .put("lastDay", kept.act().period().lastDay().toString())
                .put("headEntry", kept.act().head().entry())
                .put("headHash", kept.act().head().hash());
        if (!kept.act().reason().isEmpty()) {
            members.put("reason", kept.act().reason());
        }
        return members.put("by", kept.by().number())
                .put("at", Moments.text(kept.at(), in.zone()))
                .build();
    }

    private void close(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = in.job(ctx).id();
        LocalDate lastDay = Requests.body(ctx, Fields.object(fields -> {
            Read<LocalDate> day = fields.required("lastDay", Readers.date());
            return fields.build(day::get);
        }));
        Replies.json(ctx, json(Refusal.require(in.books().close().close(job, lastDay))));
    }

    private void reopen(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = in.job(ctx).id();
        String reason = Requests.body(ctx, Fields.object(fields -> {
            Read<String> text = fields.required("reason", Readers.text(EntryJson.MOST_NOTE));
            return fields.build(text::get);
        }));
        Replies.json(ctx, json(Refusal.require(in.books().close().reopen(job, reason))));
    }
}
