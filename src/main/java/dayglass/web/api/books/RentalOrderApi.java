package dayglass.web.api.books;

import dayglass.books.entry.Exchange;
import dayglass.books.entry.Posted;
import dayglass.books.post.CommitOrder;
import dayglass.desk.rental.Rental;
import dayglass.job.Job;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** {@code /api/rentals/{id}/commitments}: what a rental ordered, put into the books of a job. */
public final class RentalOrderApi {
    private final BooksContext in;
    private final CommitOrder commit;

    public RentalOrderApi(BooksContext in, CommitOrder commit) {
        this.in = in;
        this.commit = commit;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/rentals/{id}/commitments", in.once().apply(this::put));
    }

    /** What is asked, and whether it is only to be looked at. */
    public record Body(CommitOrder.Asked asked, boolean preview) {}

    /** Reads what is to be put into the books, alike over REST and in forms. */
    public static Reader<Body> reader(Rental.Id rental) {
        return Fields.object(fields -> {
            Read<Integer> line = fields.required("line", Readers.whole(0, Integer.MAX_VALUE));
            Read<Job.Id> job = fields.required("jobId", Ids.id(Job.Id::new));
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<String> code = fields.optional("costCode", Readers.name(), "");
            Read<String> episode = fields.optional("episode", Readers.name(), "");
            Read<String> tax = fields.optional("taxCode", Readers.name(), "");
            Read<Optional<Exchange>> exchange = fields.optional("exchange", EntryJson.exchange(date));
            Read<Boolean> preview = fields.optional("preview", Readers.yesOrNo(), false);
            return fields.build(() -> new Body(
                    new CommitOrder.Asked(
                            rental,
                            line.get(),
                            job.get(),
                            date.get(),
                            code.get(),
                            episode.get(),
                            tax.get(),
                            exchange.get()),
                    preview.get()));
        });
    }

    private void put(Context ctx) {
        Requests.onlyParameters(ctx);
        Rental.Id rental =
                Requests.find(ctx, commit.rentals(), Rental.Id::new, "rental").id();
        Body body = Requests.body(ctx, reader(rental));
        Posted posted = Refusal.require(body.preview() ? commit.preview(body.asked()) : commit.post(body.asked()));
        Json answer = Json.object()
                .put("preview", body.preview())
                .put("items", Json.list(List.of(OrderApi.row(posted, body.preview()))))
                .build();
        if (body.preview()) {
            Replies.json(ctx, answer);
        } else {
            Replies.created(ctx, "/api/book-entries/" + posted.id().number(), answer);
        }
    }
}
