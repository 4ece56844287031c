package dayglass.web.api.books;

import dayglass.base.Stored;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.job.Job;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** {@code /api/jobs/{id}/book-entries} and {@code /api/book-entries/{id}}. */
public final class EntryApi {
    static final String OF_JOB = "/api/jobs/{id}/book-entries";
    private static final String PATH = "/api/book-entries/{id}";
    private static final List<String> FILTERS = List.of("kind", "costCode", "episode", "supplier", "from", "until");

    private final BooksContext in;

    public EntryApi(BooksContext in) {
        this.in = in;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(OF_JOB, this::list);
        routes.post(OF_JOB, in.once().apply(this::post));
        routes.get(PATH, this::read);
        routes.post(PATH + "/reversal", in.once().apply(this::reverse));
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx, "limit", "after", "kind", "costCode", "episode", "supplier", "from", "until");
        Replies.Slice slice = Replies.Slice.of(ctx);
        Job.Id job = in.job(ctx).id();
        List<Posted> fetched =
                in.books().entries().list(which(ctx, job), Optional.of(new Entry.Id(slice.after())), slice.toFetch());
        Replies.json(
                ctx,
                slice.page(
                        "/api/jobs/" + job.number() + "/book-entries",
                        kept(ctx),
                        fetched,
                        each -> each.id().number(),
                        each -> EntryJson.write(each, in.zone())));
    }

    /** Which entries the query asks for. */
    static Entries.Which which(Context ctx, Job.Id job) {
        return new Entries.Which(
                job,
                once(ctx, "kind")
                        .map(word -> Kind.of(word)
                                .orElseThrow(() -> Requests.badParameter(
                                        "kind", "it must be estimate, commitment, actual or accrual"))),
                once(ctx, "costCode"),
                once(ctx, "episode"),
                once(ctx, "supplier"),
                Requests.day(ctx, "from"),
                Requests.day(ctx, "until"));
    }

    static Optional<String> once(Context ctx, String name) {
        List<String> values = ctx.queryParams(name);
        if (values.size() > 1) {
            throw Requests.badParameter(name, "it must be given once");
        }
        return values.stream().findFirst();
    }

    private static String kept(Context ctx) {
        StringBuilder query = new StringBuilder();
        for (String name : FILTERS) {
            once(ctx, name)
                    .ifPresent(value -> query.append(name)
                            .append('=')
                            .append(URLEncoder.encode(value, StandardCharsets.UTF_8))
                            .append('&'));
        }
        return query.toString();
    }

    private void post(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Job.Id, Job> job = in.job(ctx);
        EntryJson.Typed typed =
                Requests.body(ctx, EntryJson.reader(job.id(), job.facts().currency()));
        created(ctx, Refusal.require(in.books().post().postSplit(typed.entry(), typed.parts(), typed.overPeriods())));
    }

    private void created(Context ctx, List<Posted> posted) {
        Replies.created(ctx, "/api/book-entries/" + posted.get(0).id().number(), EntryJson.list(posted, in.zone()));
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        Entry.Id id = new Entry.Id(Requests.pathId(ctx));
        Posted posted = in.books()
                .entries()
                .find(id)
                .orElseThrow(
                        () -> new Refusal(ProblemKind.NOT_FOUND, "There is no entry with the id " + id.number() + "."));
        Replies.json(ctx, EntryJson.write(posted, in.zone()));
    }

    private record Reversal(LocalDate date, String reason, boolean whole) {}

    private void reverse(Context ctx) {
        Requests.onlyParameters(ctx);
        Entry.Id id = new Entry.Id(Requests.pathId(ctx));
        Reversal reversal = Requests.body(ctx, Fields.object(fields -> {
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<String> reason = fields.required("reason", Readers.text(EntryJson.MOST_NOTE));
            Read<Boolean> whole = fields.optional("wholePosting", Readers.yesOrNo(), false);
            return fields.build(() -> new Reversal(date.get(), reason.get(), whole.get()));
        }));
        created(
                ctx,
                Refusal.require(in.books().post().reverse(id, reversal.date(), reversal.reason(), reversal.whole())));
    }
}
