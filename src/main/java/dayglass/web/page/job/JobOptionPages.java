package dayglass.web.page.job;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.web.page.FormRoutes;
import dayglass.web.page.PageSources;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.request.PathNumbers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Where a job could get what it needs: the forms of its options. */
final class JobOptionPages {
    private final PageSources sources;
    private final JobPage page;
    private final OptionForm options;

    JobOptionPages(PageSources sources, JobPage page) {
        this.sources = sources;
        this.page = page;
        this.options = new OptionForm(sources, page.views());
    }

    void route(RoutesConfig routes) {
        FormRoutes.take(routes, "/jobs/{id}/options", "/jobs/{id}", this::changeOptions);
        FormRoutes.take(routes, "/jobs/{id}/consider", "/jobs/{id}", this::consider);
        FormRoutes.take(routes, "/jobs/{id}/drop", "/jobs/{id}", this::drop);
    }

    private void changeOptions(Context ctx) {
        Form form = Requests.form(ctx);
        Stored<Job.Id, Job> job = page.find(ctx);
        page.costKept(
                ctx,
                new JobPage.Sent(form, "options"),
                job,
                sources.transactions()
                        .atomically(
                                () -> options.keep(new Stored<>(job.id(), Requests.version(form), job.facts()), form)));
    }

    private void consider(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = page.find(ctx).facts();
        List<RateCard.Id> cards = new ArrayList<>(job.sources().rateCards());
        List<PurchaseOffer.Id> offers = new ArrayList<>(job.sources().purchaseOffers());
        List<Unit.Id> units = new ArrayList<>(job.sources().units());
        List<LensSet.Id> sets = new ArrayList<>(job.sources().lensSets());
        String[] chosen = form.value("other").split("/", -1);
        OptionalLong number = chosen.length == 2 ? PathNumbers.of(chosen[1]) : OptionalLong.empty();
        if (number.isEmpty()) {
            page.show(
                    ctx,
                    page.find(ctx),
                    new JobPage.Sent(form.with(List.of(new Fault("other", "choose one of the list"))), "consider"));
            return;
        }
        switch (chosen[0]) {
            case "card" -> addOnce(cards, new RateCard.Id(number.getAsLong()));
            case "offer" -> addOnce(offers, new PurchaseOffer.Id(number.getAsLong()));
            case "set" -> addOnce(sets, new LensSet.Id(number.getAsLong()));
            default -> addOnce(units, new Unit.Id(number.getAsLong()));
        }
        page.keepAndCost(
                ctx,
                new JobPage.Sent(form, "consider"),
                Outcome.done(withSources(
                        job,
                        new Job.Sources(
                                cards, offers, units, sets, job.sources().leftOut()))));
    }

    /** A form that was sent twice asks for what is considered already. */
    private static <I> void addOnce(List<I> considered, I more) {
        if (!considered.contains(more)) {
            considered.add(more);
        }
    }

    private void drop(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = page.find(ctx).facts();
        String dropped = form.value("dropped");
        Job.Sources left = new Job.Sources(
                job.sources().rateCards().stream()
                        .filter(id -> !dropped.equals("card/" + id.number()))
                        .toList(),
                job.sources().purchaseOffers().stream()
                        .filter(id -> !dropped.equals("offer/" + id.number()))
                        .toList(),
                job.sources().units().stream()
                        .filter(id -> !dropped.equals("unit/" + id.number()))
                        .toList(),
                job.sources().lensSets().stream()
                        .filter(id -> !dropped.equals("set/" + id.number()))
                        .toList(),
                job.sources().leftOut());
        page.keepAndCost(ctx, new JobPage.Sent(form, "options"), Outcome.done(withSources(job, left)));
    }

    static Job withSources(Job job, Job.Sources changed) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), job.schedule(), job.needs(), changed);
    }
}
