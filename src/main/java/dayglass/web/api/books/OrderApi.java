package dayglass.web.api.books;

import dayglass.base.Stored;
import dayglass.books.CostingLines;
import dayglass.books.JobCostCodes;
import dayglass.books.entry.Entries;
import dayglass.books.entry.Entry;
import dayglass.books.entry.Kind;
import dayglass.books.entry.Posted;
import dayglass.books.post.AcceptPlan;
import dayglass.job.Job;
import dayglass.planning.Costings;
import dayglass.planning.KeptCosting;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code /api/jobs/{id}/accepted-plans} and {@code /api/jobs/{id}/commitments}. */
public final class OrderApi {
    private final BooksContext in;
    private final Costings costings;
    private final JobCostCodes codes;

    public OrderApi(BooksContext in, Costings costings, JobCostCodes codes) {
        this.in = in;
        this.costings = costings;
        this.codes = codes;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/jobs/{id}/accepted-plans", in.once().apply(this::accept));
        routes.get("/api/jobs/{id}/commitments", this::orders);
        routes.post("/api/jobs/{id}/commitments/import", in.once().apply(this::bringIn));
    }

    private record Accepted(KeptCosting.Id costing, LocalDate date, Kind as, Map<String, String> orders) {}

    private void accept(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = in.job(ctx).id();
        Accepted accepted = Requests.body(ctx, Fields.object(fields -> {
            Read<KeptCosting.Id> costing = fields.required("costingId", Ids.id(KeptCosting.Id::new));
            Read<LocalDate> date = fields.required("date", Readers.date());
            Read<Kind> as = fields.optional(
                    "as",
                    Readers.word(Map.of(Kind.COMMITMENT.word(), Kind.COMMITMENT, Kind.ESTIMATE.word(), Kind.ESTIMATE)),
                    Kind.COMMITMENT);
            Read<Map<String, String>> orders =
                    fields.optional("purchaseOrders", Readers.words(Readers.name()), Map.of());
            return fields.build(() -> new Accepted(costing.get(), date.get(), as.get(), orders.get()));
        }));
        Stored<KeptCosting.Id, KeptCosting> costing = costings.find(accepted.costing())
                .filter(found -> found.facts().summary().job().equals(Optional.of(job)))
                .orElseThrow(() -> Refusal.faulty(List.of(new dayglass.base.Fault(
                        "/costingId",
                        "this job has no costing with the id "
                                + accepted.costing().number()))));
        CostingLines lines = CostingLines.of(costing, codes.of(job).facts().codes());
        var posted = Refusal.require(in.books()
                .acceptPlan()
                .accept(new AcceptPlan.Plan(
                        job, costing.id().number(), lines, accepted.as(), accepted.date(), accepted.orders())));
        Replies.created(ctx, "/api/book-entries/" + posted.get(0).id().number(), EntryJson.list(posted, in.zone()));
    }

    private record Table(String text, boolean preview) {}

    private void bringIn(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = in.job(ctx).id();
        Table table = Requests.body(ctx, Fields.object(fields -> {
            Read<String> text = fields.required("text", Readers.wholeText());
            Read<Boolean> preview = fields.optional("preview", Readers.yesOrNo(), false);
            return fields.build(() -> new Table(text.get(), preview.get()));
        }));
        List<Entry> orders = Refusal.require(new OrderTable(in.books(), job, in.base(job)).read(table.text()));
        List<Posted> posted = Refusal.require(
                table.preview()
                        ? in.books().post().preview(orders)
                        : in.books().post().post(orders));
        List<Json> items =
                posted.stream().<Json>map(each -> row(each, table.preview())).toList();
        Json.Obj answer = Json.object()
                .put("preview", table.preview())
                .put("items", Json.list(items))
                .build();
        if (table.preview()) {
            Replies.json(ctx, answer);
        } else {
            Replies.created(ctx, "/api/book-entries/" + posted.get(0).id().number(), answer);
        }
    }

    /** A row of the table as it stands in the books, or would. */
    /** An order as it would stand in the books, or does. */
    static Json.Obj row(Posted posted, boolean preview) {
        Entry entry = posted.entry();
        Json.Members members = Json.object();
        if (!preview) {
            members.put("commitment", posted.id().number());
        }
        members.put("supplier", entry.coding().supplier())
                .put("purchaseOrder", entry.papers().purchaseOrder())
                .put("description", entry.item().description())
                .put("costCode", entry.coding().costCode())
                .put("serviceFrom", entry.service().from().toString())
                .put("serviceTo", entry.service().lastDay().toString());
        if (!entry.sum().taxCode().isEmpty()) {
            members.put("taxCode", entry.sum().taxCode());
        }
        return members.put("net", entry.amounts().net().amount())
                .put("tax", entry.amounts().tax().amount())
                .put("currency", entry.amounts().net().currency().code())
                .put("exchange", EntryJson.exchange(entry.sum().exchange()))
                .put("baseNet", entry.amounts().baseNet().amount())
                .put("baseCurrency", entry.amounts().baseNet().currency().code())
                .build();
    }

    private void orders(Context ctx) {
        Requests.onlyParameters(ctx, "asOf");
        List<Json> items = in.books().entries().orders(in.job(ctx).id(), Requests.day(ctx, "asOf")).stream()
                .map(OrderApi::json)
                .toList();
        Replies.json(ctx, Json.object().put("items", Json.list(items)).build());
    }

    private static Json json(Entries.Order order) {
        Entry entry = order.commitment().entry();
        return Json.object()
                .put("commitment", order.commitment().id().number())
                .put("supplier", entry.coding().supplier())
                .put("purchaseOrder", entry.papers().purchaseOrder())
                .put("description", entry.item().description())
                .put("costCode", entry.coding().costCode())
                .put("serviceFrom", entry.service().from().toString())
                .put("serviceTo", entry.service().lastDay().toString())
                .put("net", entry.amounts().net().amount())
                .put("openNet", order.open().net().amount())
                .put("accruedNet", order.accrued().net().amount())
                .put("currency", entry.amounts().net().currency().code())
                .put("openBaseNet", order.open().baseNet().amount())
                .put("baseCurrency", entry.amounts().baseNet().currency().code())
                .build();
    }
}
