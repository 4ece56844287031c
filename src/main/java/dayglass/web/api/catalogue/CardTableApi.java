package dayglass.web.api.catalogue;

import dayglass.base.Currency;
import dayglass.base.Stored;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Supplier;
import dayglass.sheet.CsvText;
import dayglass.shelf.RateJson;
import dayglass.shelf.table.CardReport;
import dayglass.shelf.table.CardTables;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.api.Resource;
import dayglass.web.api.TableRequests;
import dayglass.web.error.Refusal;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;

/** {@code /api/rate-cards/import} and {@code /api/rate-cards/{id}/rates.csv}. */
public final class CardTableApi {
    private final CardTables tables;
    private final Resource<RateCard.Id, RateCard> cards;

    public CardTableApi(CardTables tables, RateCards cards) {
        this.tables = tables;
        this.cards = RateCardApi.of(cards);
    }

    private record Wanted(CardTables.Heading heading, CsvText text) {}

    public void addTo(RoutesConfig routes) {
        routes.post("/api/rate-cards/import", this::bringIn);
        routes.get("/api/rate-cards/{id}/rates.csv", this::send);
    }

    private void bringIn(Context ctx) {
        Requests.onlyParameters(ctx, "preview");
        boolean preview = TableRequests.preview(ctx);
        Wanted wanted = Requests.body(ctx, Fields.object(CardTableApi::wanted));
        if (preview) {
            Replies.json(ctx, json(Refusal.require(tables.preview(wanted.heading(), wanted.text()))));
        } else {
            cards.created(ctx, tables.bringIn(wanted.heading(), wanted.text()));
        }
    }

    private void send(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<RateCard.Id, RateCard> card = cards.find(ctx);
        ctx.contentType("text/csv; charset=utf-8").result(tables.csv(card.facts()));
    }

    private static Read<Wanted> wanted(Fields fields) {
        Read<Supplier.Id> supplier = fields.required("supplierId", Ids.id(Supplier.Id::new));
        Read<String> name = fields.required("name", Readers.name());
        Read<Currency> currency = fields.required("currency", Decimals.currency());
        Read<LocalDate> from = fields.required("effectiveFrom", Readers.date());
        Read<CsvText> text = fields.required("text", TableRequests.csv());
        return fields.build(() ->
                new Wanted(new CardTables.Heading(supplier.get(), name.get(), currency.get(), from.get()), text.get()));
    }

    private static Json json(CardReport report) {
        return Json.object()
                .put("separator", String.valueOf(report.separator()))
                .put("columns", TableRequests.columns(report.columns()))
                .put(
                        "rates",
                        Json.list(
                                report.rates().stream().map(CardTableApi::line).toList()))
                .put("faulty", TableRequests.faulty(report.faulty()))
                .build();
    }

    private static Json line(CardReport.Line line) {
        return Json.object()
                .put("line", line.line())
                .put("rate", RateJson.write(line.rate()))
                .build();
    }
}
