package dayglass.web.api.books;

import dayglass.base.Currency;
import dayglass.base.Stored;
import dayglass.books.post.Books;
import dayglass.house.HouseSettings;
import dayglass.job.Job;
import dayglass.web.api.Requests;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.time.ZoneId;
import java.util.function.UnaryOperator;

/**
 * What every resource of the books needs.
 *
 * @param once makes a handler that creates money safe to be called twice
 */
public record BooksContext(Books books, HouseSettings settings, UnaryOperator<Handler> once) {
    /** The job in the address. */
    Stored<Job.Id, Job> job(Context ctx) {
        return Requests.find(ctx, books.house().jobs(), Job.Id::new, "job");
    }

    Currency base(Job.Id job) {
        return books.house().jobs().find(job).orElseThrow().facts().currency();
    }

    ZoneId zone() {
        return settings.now().facts().zone();
    }
}
