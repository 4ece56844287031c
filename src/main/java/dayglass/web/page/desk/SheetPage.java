package dayglass.web.page.desk;

import dayglass.base.Stored;
import dayglass.catalogue.RateCard;
import dayglass.shelf.LetsNames;
import dayglass.web.page.Html;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** A rate card to read and to print, and as a table to take along. */
final class SheetPage {
    private final DeskSources sources;
    private final Html html;
    private final CardPages cards;

    SheetPage(DeskSources sources, Html html, CardPages cards) {
        this.sources = sources;
        this.html = html;
        this.cards = cards;
    }

    void route(RoutesConfig routes) {
        routes.get("/desk/cards/{id}/sheet", this::show);
        routes.get("/desk/cards/{id}/rates.csv", this::send);
    }

    private void show(Context ctx) {
        Stored<RateCard.Id, RateCard> card = cards.find(ctx);
        html.render(
                ctx,
                "ratesheet.jte",
                Map.of(
                        "id",
                        card.id().number(),
                        "label",
                        cards.label(card.facts()),
                        "currency",
                        card.facts().currency().code(),
                        "sheet",
                        RateSheet.of(card.facts().rates(), new LetsNames(sources.shelf())),
                        "succession",
                        Succession.of(sources.cards(), card, sources.today())));
    }

    private void send(Context ctx) {
        Stored<RateCard.Id, RateCard> card = cards.find(ctx);
        ctx.contentType("text/csv; charset=utf-8")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"rate-card-" + card.id().number() + ".csv\"")
                .result(sources.tables().cards().csv(card.facts()));
    }
}
