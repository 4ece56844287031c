package dayglass.web.page;

import dayglass.base.DateRange;
import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.cost.Schedule;
import dayglass.cost.plan.Question;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.web.page.form.Form;
import dayglass.wire.Decimals;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import dayglass.wire.costing.NeedsReader;
import dayglass.wire.costing.ScheduleReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One job: its schedule, needs, options and terms, each a form by itself. */
final class JobPages {
    private static final int MOST_PERCENT = 1_000;

    private final PageSources sources;
    private final Html html;
    private final JobViews views;
    private final OptionForm options;
    private final RunPages runs;

    JobPages(PageSources sources, Html html, RunPages runs) {
        this.sources = sources;
        this.html = html;
        this.views = new JobViews(sources);
        this.options = new OptionForm(sources, views);
        this.runs = runs;
    }

    void route(RoutesConfig routes) {
        routes.get("/jobs/{id}", ctx -> show(ctx, find(ctx), Form.EMPTY, ""));
        FormRoutes.take(routes, "/jobs/{id}/schedule", "/jobs/{id}", this::changeSchedule);
        FormRoutes.take(routes, "/jobs/{id}/needs", "/jobs/{id}", this::addNeed);
        FormRoutes.take(routes, "/jobs/{id}/needs/{number}/remove", "/jobs/{id}", this::removeNeed);
        FormRoutes.take(routes, "/jobs/{id}/options", "/jobs/{id}", this::changeOptions);
        FormRoutes.take(routes, "/jobs/{id}/consider", "/jobs/{id}", this::consider);
        FormRoutes.take(routes, "/jobs/{id}/drop", "/jobs/{id}", this::drop);
        FormRoutes.take(routes, "/jobs/{id}/terms", "/jobs/{id}", this::changeTerms);
        FormRoutes.take(
                routes,
                "/jobs/{id}/cost",
                "/jobs/{id}",
                ctx -> runs.start(ctx, find(ctx).id()));
    }

    private Stored<Job.Id, Job> find(Context ctx) {
        return Requests.find(ctx, sources.jobs(), Job.Id::new);
    }

    /** @param section which of the page's forms was sent; empty where none was */
    private void show(Context ctx, Stored<Job.Id, Job> job, Form form, String section) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("page", views.of(job));
        model.put("form", form);
        model.put("section", section);
        model.put("terms", section.equals("terms") ? form : terms(job.facts()));
        if (form.faulty()) {
            html.renderFaulty(ctx, "job.jte", model);
        } else {
            html.render(ctx, "job.jte", model);
        }
    }

    private static Form terms(Job job) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("name", job.name());
        values.put("discountRatePercent", job.discountRate().value().toPlainString());
        values.put("cashLimit", job.cashLimit().map(Money::amount).orElse(""));
        return new Form(values, List.of(), "");
    }

    /** Keeps the changed job and costs it, or shows the form again with what is wrong. */
    private void keepAndCost(Context ctx, Form form, String section, Outcome<Job> changed) {
        keepAndCost(ctx, form, section, find(ctx), changed);
    }

    /** @param shown the job as the page shows it where the change is refused */
    private void keepAndCost(Context ctx, Form form, String section, Stored<Job.Id, Job> shown, Outcome<Job> changed) {
        changed.then(facts -> sources.jobs().change(new Stored<>(shown.id(), Requests.version(form), facts)))
                .fold(
                        stored -> {
                            runs.start(ctx, stored.id());
                            return stored;
                        },
                        problem -> {
                            show(ctx, shown, form.with(problem), section);
                            return problem;
                        });
    }

    /** Days that are refused stay painted, since painting them may have taken a while. */
    private void changeSchedule(Context ctx) {
        Form form = Requests.form(ctx);
        Stored<Job.Id, Job> job = find(ctx);
        ScheduleReader.schedule()
                .read(form.value("schedule").getBytes(StandardCharsets.UTF_8))
                .fold(
                        schedule -> {
                            Job painted = onDays(job.facts(), schedule);
                            Stored<Job.Id, Job> shown = new Stored<>(job.id(), job.version(), painted);
                            keepAndCost(ctx, form, "schedule", shown, withSchedule(job.facts(), schedule));
                            return schedule;
                        },
                        faults -> {
                            keepAndCost(
                                    ctx,
                                    form,
                                    "schedule",
                                    Outcome.refused(
                                            Problem.Code.FAULTY, faults.get(0).message()));
                            return faults;
                        });
    }

    private static Job onDays(Job job, Schedule schedule) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), schedule, job.needs(), job.sources());
    }

    private static Outcome<Job> withSchedule(Job job, Schedule schedule) {
        DateRange horizon = schedule.horizon();
        for (Question.Need need : job.needs()) {
            for (DateRange dates : need.dates()) {
                if (dates.from().isBefore(horizon.from()) || dates.until().isAfter(horizon.until())) {
                    return Outcome.refused(
                            Problem.Code.CANNOT_BE_DONE,
                            "The need of " + need.slot() + " names dates that would lie outside the schedule: change"
                                    + " that need first.");
                }
            }
        }
        return Outcome.done(onDays(job, schedule));
    }

    private void addNeed(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = find(ctx).facts();
        Outcome<Job> changed = NeedsReader.needs(Read.good(job.schedule().horizon()))
                .readAt("", Json.list(List.of(NeedForm.json(ctx, form))), Listener.PERSON)
                .fold(
                        needs -> {
                            List<Question.Need> all = new ArrayList<>(job.needs());
                            all.addAll(needs);
                            return Outcome.done(withNeeds(job, all));
                        },
                        faults -> Outcome.refused(Problem.faulty(NeedForm.atFields(faults))));
        keepAndCost(ctx, form, "needs", changed);
    }

    private void removeNeed(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = find(ctx).facts();
        List<Question.Need> left = new ArrayList<>(job.needs());
        int number = Math.toIntExact(Math.min(Requests.number(ctx, "number"), left.size() + 1L)) - 1;
        if (number >= left.size()) {
            throw Requests.missing(ctx);
        }
        left.remove(number);
        Outcome<Job> changed = left.isEmpty()
                ? Outcome.refused(Problem.Code.CANNOT_BE_DONE, "A job needs at least one slot: add another first.")
                : Outcome.done(withNeeds(job, left));
        keepAndCost(ctx, form, "needs", changed);
    }

    private static Job withNeeds(Job job, List<Question.Need> needs) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), job.schedule(), needs, job.sources());
    }

    private void changeOptions(Context ctx) {
        Form form = Requests.form(ctx);
        Stored<Job.Id, Job> job = find(ctx);
        sources.transactions()
                .atomically(() -> options.keep(new Stored<>(job.id(), Requests.version(form), job.facts()), form))
                .fold(
                        stored -> {
                            runs.start(ctx, stored.id());
                            return stored;
                        },
                        problem -> {
                            show(ctx, job, form.with(problem), "options");
                            return problem;
                        });
    }

    private void consider(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = find(ctx).facts();
        List<RateCard.Id> cards = new ArrayList<>(job.sources().rateCards());
        List<PurchaseOffer.Id> offers = new ArrayList<>(job.sources().purchaseOffers());
        List<Unit.Id> units = new ArrayList<>(job.sources().units());
        List<LensSet.Id> sets = new ArrayList<>(job.sources().lensSets());
        String[] chosen = form.value("other").split("/", -1);
        if (chosen.length != 2 || !chosen[1].matches("[1-9][0-9]{0,17}")) {
            show(ctx, find(ctx), form.with(List.of(new Fault("other", "choose one of the list"))), "consider");
            return;
        }
        long number = Long.parseLong(chosen[1]);
        switch (chosen[0]) {
            case "card" -> cards.add(new RateCard.Id(number));
            case "offer" -> offers.add(new PurchaseOffer.Id(number));
            case "set" -> sets.add(new LensSet.Id(number));
            default -> units.add(new Unit.Id(number));
        }
        keepAndCost(
                ctx,
                form,
                "consider",
                Outcome.done(withSources(
                        job,
                        new Job.Sources(
                                cards, offers, units, sets, job.sources().leftOut()))));
    }

    private void drop(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = find(ctx).facts();
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
        keepAndCost(ctx, form, "options", Outcome.done(withSources(job, left)));
    }

    static Job withSources(Job job, Job.Sources changed) {
        return new Job(
                job.name(), job.currency(), job.discountRate(), job.cashLimit(), job.schedule(), job.needs(), changed);
    }

    private void changeTerms(Context ctx) {
        Form form = Requests.form(ctx);
        Job job = find(ctx).facts();
        List<Fault> faults = new ArrayList<>();
        Optional<String> name = JobsPages.read(form, "name", Readers.name(), faults);
        Optional<Percent> rate = JobsPages.read(form, "discountRatePercent", Decimals.percent(0, MOST_PERCENT), faults);
        Optional<Money> limit = form.has("cashLimit")
                ? JobsPages.read(form, "cashLimit", Decimals.money(Read.good(job.currency())), faults)
                : Optional.empty();
        Outcome<Job> changed = faults.isEmpty()
                ? Outcome.done(new Job(
                        name.orElseThrow(),
                        job.currency(),
                        rate.orElseThrow(),
                        limit,
                        job.schedule(),
                        job.needs(),
                        job.sources()))
                : Outcome.refused(Problem.faulty(faults));
        keepAndCost(ctx, form, "terms", changed);
    }
}
