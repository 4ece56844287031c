package dayglass.web.page.books;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.books.chart.Chart;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Posted;
import dayglass.books.post.CommitOrder;
import dayglass.desk.price.PricedLine;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.SupplierOrder;
import dayglass.job.Job;
import dayglass.web.api.books.RentalOrderApi;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import dayglass.web.request.PathNumbers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a rental ordered from a supplier, put into the books of a job: looked at first, then posted. */
public final class RentalOrderPage {
    private static final String PAGE = "/desk/rentals/{id}/commitments/{line}";

    private final BooksPages in;
    private final CommitOrder commit;

    RentalOrderPage(BooksPages in, CommitOrder commit) {
        this.in = in;
        this.commit = commit;
    }

    /**
     * The order.
     *
     * @param line the priced line as the address counts it, from 1
     */
    public record Ordered(
            long rental, long number, int line, String what, String days, String supplier, String order, String bill) {}

    /** The job that it is to be posted in. */
    public record Into(long job, String name, String currency, List<Choice> codes, boolean asksExchange) {
        public Into {
            codes = List.copyOf(codes);
        }
    }

    /** What would be posted. */
    public record Looked(
            String order, String code, String service, String net, String tax, String base, String exchange) {}

    private record Place(Stored<Rental.Id, Rental> rental, int at, PricedLine line, SupplierOrder order) {}

    void route(RoutesConfig routes) {
        routes.get(PAGE, ctx -> show(ctx, asked(ctx), Optional.empty()));
        routes.post(PAGE, this::take);
    }

    /** A link or the choice of a job says which job's books. */
    private Form asked(Context ctx) {
        return Form.EMPTY
                .with("/jobId", Optional.ofNullable(ctx.queryParam("/jobId")).orElse(""))
                .with("/date", in.today().toString());
    }

    private Place place(Context ctx) {
        Stored<Rental.Id, Rental> rental = Requests.find(ctx, commit.rentals(), Rental.Id::new);
        List<PricedLine> lines = rental.facts().promise().price().lines();
        long at = Requests.number(ctx, "line") - 1;
        if (at >= lines.size()) {
            throw Requests.missing(ctx);
        }
        PricedLine line = lines.get((int) at);
        SupplierOrder order = rental.facts().orderOf((int) at).orElseThrow(() -> Requests.missing(ctx));
        return new Place(rental, (int) at, line, order);
    }

    private void show(Context ctx, Form form, Optional<Posted> looked) {
        Place place = place(ctx);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("order", ordered(place));
        model.put("jobs", jobs());
        model.put("form", form);
        into(form, place).ifPresent(into -> model.put("into", into));
        looked.ifPresent(posted -> model.put("looked", looked(posted.entry())));
        Optional.ofNullable(commit.orders().of(place.rental().id()).get(place.at()))
                .ifPresent(standing -> model.put("standing", standing.entry()));
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "rentalorder.jte", model);
        } else {
            in.html.render(ctx, "rentalorder.jte", model);
        }
    }

    private static Ordered ordered(Place place) {
        PricedLine.RentedIn from = place.line().rentedIn().orElseThrow();
        String taxes = String.join(
                ", ",
                from.billedTaxes().entrySet().stream()
                        .map(tax -> tax.getKey() + " " + Words.amount(tax.getValue()))
                        .toList());
        return new Ordered(
                place.rental().id().number(),
                place.rental().facts().number(),
                place.at() + 1,
                place.line().what(),
                Words.dates(place.line().dates()),
                from.supplier(),
                place.order().number(),
                Words.money(from.billed()) + (taxes.isEmpty() ? "" : ", of it " + taxes));
    }

    private List<Choice> jobs() {
        List<Choice> jobs = new ArrayList<>();
        Requests.all(in.books.house().jobs())
                .forEach(job -> jobs.add(new Choice(
                        String.valueOf(job.id().number()), job.facts().name())));
        return jobs;
    }

    private Optional<Into> into(Form form, Place place) {
        return PathNumbers.of(form.value("/jobId")).stream()
                .mapToObj(number -> in.books.house().jobs().find(new Job.Id(number)))
                .flatMap(Optional::stream)
                .findFirst()
                .map(job -> new Into(
                        job.id().number(),
                        job.facts().name(),
                        job.facts().currency().code(),
                        codes(in.books.charts().of(job.id()).facts()),
                        CommitOrder.asksExchange(
                                place.line().rentedIn().orElseThrow(),
                                job.facts().currency())));
    }

    private static List<Choice> codes(Chart chart) {
        List<Choice> codes = new ArrayList<>();
        if (!chart.codes().isEmpty()) {
            codes.add(new Choice("", "choose"));
        }
        chart.codes()
                .forEach(code -> codes.add(
                        new Choice(code.code(), code.code() + (code.name().isEmpty() ? "" : ", " + code.name()))));
        return codes;
    }

    private static Looked looked(Entry entry) {
        boolean foreign = !entry.amounts()
                .net()
                .currency()
                .equals(entry.amounts().baseNet().currency());
        return new Looked(
                entry.papers().purchaseOrder(),
                entry.coding().costCode(),
                Words.dates(entry.service()),
                Words.money(entry.amounts().net()),
                entry.amounts().tax().signum() == 0
                        ? "none"
                        : Words.money(entry.amounts().tax()) + " " + entry.sum().taxCode(),
                foreign ? Words.money(entry.amounts().baseNet()) : "",
                foreign
                        ? entry.sum().exchange().rate().toPlainString() + ", "
                                + entry.sum().exchange().source()
                        : "");
    }

    private void take(Context ctx) {
        Place place = place(ctx);
        Form form = Requests.form(ctx).with("/line", String.valueOf(place.at()));
        Outcome<CommitOrder.Asked> asked = BooksPages.read(
                        RentalOrderApi.reader(place.rental().id()), FormJson.read(form))
                .map(RentalOrderApi.Body::asked);
        if (form.value("do").equals("post")) {
            in.once(
                    ctx,
                    form,
                    () -> asked.then(commit::post)
                            .map(posted ->
                                    "/desk/rentals/" + place.rental().id().number()),
                    problem -> show(ctx, form.with(problem), Optional.empty()));
            return;
        }
        asked.then(commit::preview)
                .fold(
                        posted -> {
                            show(ctx, form, Optional.of(posted));
                            return true;
                        },
                        problem -> {
                            show(ctx, form.with(problem), Optional.empty());
                            return false;
                        });
    }
}
