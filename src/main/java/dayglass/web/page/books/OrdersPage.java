package dayglass.web.page.books;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Posted;
import dayglass.job.Job;
import dayglass.web.api.books.OrderTable;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is ordered and how much of it is open, and orders from before the books began, brought in as a table. */
public final class OrdersPage {
    private final BooksPages in;

    OrdersPage(BooksPages in) {
        this.in = in;
    }

    /**
     * An order.
     *
     * @param id of its entry; 0 where it would be posted
     */
    public record Row(
            long id,
            String purchaseOrder,
            String supplier,
            String what,
            String code,
            String dates,
            String net,
            String open,
            String accrued) {}

    void route(RoutesConfig routes) {
        routes.get("/books/{id}/orders", ctx -> show(ctx, Form.EMPTY, List.of()));
        routes.post("/books/{id}/orders", this::bringIn);
    }

    private void show(Context ctx, Form form, List<Row> looked) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Map<String, Object> model = BooksPages.model(job, form);
        model.put(
                "rows",
                in.books.entries().orders(job.id(), Optional.empty()).stream()
                        .map(OrdersPage::row)
                        .toList());
        model.put("looked", looked);
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "orders.jte", model);
        } else {
            in.html.render(ctx, "orders.jte", model);
        }
    }

    private static Row row(Entries.Order order) {
        return row(
                order.commitment(),
                order.commitment().id().number(),
                Words.money(order.open().net()),
                order.accrued().isZero() ? "" : Words.money(order.accrued().net()));
    }

    private static Row row(Posted posted, long id, String open, String accrued) {
        Entry entry = posted.entry();
        return new Row(
                id,
                entry.papers().purchaseOrder(),
                entry.coding().supplier(),
                entry.item().description(),
                entry.coding().costCode(),
                Words.dates(entry.service()),
                Words.money(entry.amounts().net()),
                open,
                accrued);
    }

    private void bringIn(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form sent = Requests.form(ctx);
        String text = new String(Requests.fileOrText(ctx, sent, "file", "/text"), StandardCharsets.UTF_8);
        Form form = sent.with("/text", text);
        Outcome<List<Entry>> read =
                new OrderTable(in.books, job.id(), job.facts().currency()).read(text);
        if (form.value("do").equals("bring")) {
            in.once(
                    ctx,
                    form,
                    () -> read.then(in.books.post()::post)
                            .map(posted -> "/books/" + job.id().number() + "/orders"),
                    problem -> show(ctx, form.with(problem), List.of()));
            return;
        }
        read.then(in.books.post()::preview)
                .fold(
                        posted -> {
                            show(
                                    ctx,
                                    form,
                                    posted.stream()
                                            .map(each -> row(each, 0, "", ""))
                                            .toList());
                            return true;
                        },
                        problem -> {
                            show(ctx, form.with(problem), List.of());
                            return false;
                        });
    }
}
