package dayglass.web.page.books;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.JobCostCodes;
import dayglass.books.export.Layouts;
import dayglass.books.gear.BringIn;
import dayglass.books.list.JobLists;
import dayglass.books.post.Books;
import dayglass.books.post.CommitOrder;
import dayglass.books.report.CostFigures;
import dayglass.books.report.TypedFigures;
import dayglass.house.Household;
import dayglass.job.Job;
import dayglass.planning.Costings;
import dayglass.web.page.Html;
import dayglass.web.page.Once;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import dayglass.wire.Reader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Every page of the books, and what they have in common. */
public final class BooksPages {
    final Books books;
    final Plans plans;
    final Household household;
    final Html html;
    private final Clock clock;

    /** Where figures and what can be accepted come from, and how exports are laid out. */
    public record Plans(
            CostFigures figures,
            TypedFigures typed,
            Costings costings,
            JobCostCodes codes,
            Layouts layouts,
            BringIn gear,
            CommitOrder commitOrder,
            JobLists lists) {}

    public BooksPages(Books books, Plans plans, Household household, Clock clock) {
        this.books = books;
        this.plans = plans;
        this.household = household;
        this.html = new Html(household);
        this.clock = clock;
    }

    public void route(RoutesConfig routes) {
        // Before the pages of a job, whose address would take the word for a number.
        new LayoutPages(plans.layouts(), html).route(routes);
        new GearPages(this, plans.gear().gear()).route(routes);
        new BringInPage(this, plans.gear()).route(routes);
        new RentalOrderPage(this, plans.commitOrder()).route(routes);
        new ToCompletePage(this).route(routes);
        new ReportPage(this).route(routes);
        new EntryPages(this).route(routes);
        new PeriodPage(this).route(routes);
        new InvoicePage(this).route(routes);
        new PaymentPage(this).route(routes);
        new OrdersPage(this).route(routes);
        new ListPages(this, plans.lists()).route(routes);
    }

    Stored<Job.Id, Job> job(Context ctx) {
        return Requests.find(ctx, books.house().jobs(), Job.Id::new);
    }

    ZoneId zone() {
        return household.settings().now().facts().zone();
    }

    Instant now() {
        return clock.instant();
    }

    LocalDate today() {
        return clock.instant().atZone(zone()).toLocalDate();
    }

    /** What every page of a job's books shows. */
    static Map<String, Object> model(Stored<Job.Id, Job> job, Form form) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("job", job.id().number());
        model.put("name", job.facts().name());
        model.put("form", form);
        return model;
    }

    /** What a form's JSON stands for, its faults told in words for whoever fills it in. */
    static <T> Outcome<T> read(Reader<T> reader, Json json) {
        return reader.readAt("", json, Listener.PERSON).outcome();
    }

    void once(Context ctx, Form form, Supplier<Outcome<String>> act, Consumer<Problem> refused) {
        new Once(household.keyedAnswers()).act(ctx, form, act, refused);
    }
}
