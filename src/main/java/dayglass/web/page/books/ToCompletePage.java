package dayglass.web.page.books;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.books.report.SayToComplete;
import dayglass.books.report.ToComplete;
import dayglass.job.Job;
import dayglass.web.api.books.ReportApi;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.page.picture.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is typed as still to come of a job's cost codes. */
public final class ToCompletePage {
    private static final String PATH = "/books/{id}/to-complete";

    private final BooksPages in;

    ToCompletePage(BooksPages in) {
        this.in = in;
    }

    /**
     * A figure that was typed.
     *
     * @param amounts net and tax; empty where it takes back
     * @param counts it is the one that the report uses
     */
    public record Row(
            String place, String name, String date, List<String> amounts, String note, String who, boolean counts) {
        public Row {
            amounts = List.copyOf(amounts);
        }
    }

    void route(RoutesConfig routes) {
        routes.get(PATH, ctx -> show(ctx, Form.EMPTY));
        routes.post(PATH, this::say);
    }

    private void show(Context ctx, Form form) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Map<String, Object> model = BooksPages.model(job, form.values().isEmpty() ? blank(ctx) : form);
        List<ToComplete.Kept> all = new ArrayList<>(in.plans.typed().of(job.id()));
        List<ToComplete.Kept> inForce = ToComplete.inForce(all, Optional.empty());
        Collections.reverse(all);
        model.put("currency", job.facts().currency().code());
        model.put("codes", in.books.charts().of(job.id()).facts().codes());
        model.put(
                "rows",
                all.stream()
                        .map(kept -> row(job.id(), kept, inForce.contains(kept)))
                        .toList());
        if (form.faulty()) {
            in.html.renderFaulty(ctx, "tocomplete.jte", model);
        } else {
            in.html.render(ctx, "tocomplete.jte", model);
        }
    }

    private Form blank(Context ctx) {
        String code = Optional.ofNullable(ctx.queryParam("costCode")).orElse("");
        return Form.EMPTY.with("/date", in.today().toString()).with("/costCode", code);
    }

    private Row row(Job.Id job, ToComplete.Kept kept, boolean counts) {
        ToComplete figure = kept.figure();
        ToComplete.Place place = figure.place();
        String code = place.costCode().isEmpty() ? "without a code" : place.costCode();
        String who = in.household
                .people()
                .find(kept.by())
                .map(person -> person.facts().name())
                .orElse("");
        return new Row(
                place.episode().isEmpty() ? code : code + ", episode " + place.episode(),
                in.books.charts().of(job).facts().nameOf(place.costCode()),
                Words.date(figure.date()),
                figure.sum().map(ToCompletePage::amounts).orElse(List.of()),
                figure.note(),
                who + ", " + Words.moment(kept.at(), in.zone()),
                counts);
    }

    private static List<String> amounts(ToComplete.Sum sum) {
        return List.of(words(sum.net()), words(sum.tax()));
    }

    private static String words(Money amount) {
        return Words.amount(amount);
    }

    private void say(Context ctx) {
        Stored<Job.Id, Job> job = in.job(ctx);
        Form form = Requests.form(ctx);
        in.once(
                ctx,
                form,
                () -> BooksPages.read(ReportApi.toComplete(job.id(), job.facts().currency()), FormJson.read(form))
                        .then(figure -> new SayToComplete(in.books, in.plans.typed()).say(figure))
                        .map(kept -> "/books/" + job.id().number() + "/to-complete"),
                problem -> show(ctx, form.with(problem)));
    }
}
