package dayglass.app.demo;

import dayglass.base.Currency;
import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.Supplier;
import dayglass.inventory.Shelf;
import dayglass.job.Briefs;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.job.Ways;
import dayglass.planning.OptionSources;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Gives the demo's job a brief and one way of each kind that the trade knows, as the pages would enter them. */
public final class DemoWays {
    private final Into into;
    private final Stored<Job.Id, Job> job;
    private final Map<String, RateCard.Id> cards = new HashMap<>();
    private final Map<String, PurchaseOffer.Id> offers = new HashMap<>();

    /** The rooms that are filled. */
    public record Into(OptionSources sources, Shelf shelf, Briefs briefs, Ways ways) {}

    private DemoWays(Into into, Stored<Job.Id, Job> job) {
        this.into = into;
        this.job = job;
    }

    public static void fill(Into into, Stored<Job.Id, Job> job) {
        DemoWaysFile file = DemoWaysFile.reader(job.id(), job.facts().currency())
                .read(DemoData.bytes("ways.json"))
                .fold(read -> read, faults -> {
                    throw new IllegalStateException("demo-data/ways.json is faulty: " + faults);
                });
        new DemoWays(into, job).fill(file);
    }

    private void fill(DemoWaysFile file) {
        Currency currency = job.facts().currency();
        job.facts().sources().rateCards().stream()
                .map(into.sources().rateCards()::find)
                .flatMap(Optional::stream)
                .forEach(this::know);
        file.cards()
                .forEach(card -> know(DemoData.must(into.sources()
                        .rateCards()
                        .add(new RateCard(
                                supplier(card.supplier()),
                                card.name(),
                                currency,
                                card.effectiveFrom(),
                                card.rates())))));
        file.offers()
                .forEach(each -> offers.put(
                        each.offer().code(),
                        DemoData.must(into.sources()
                                        .purchaseOffers()
                                        .add(new PurchaseOffer(
                                                supplier(each.supplier()), currency, each.offer(), Optional.empty())))
                                .id()));
        DemoData.must(into.briefs().keep(new Stored<>(job.id(), 0, file.brief())));
        file.ways()
                .forEach(way -> DemoData.must(into.ways()
                        .add(new Way(
                                job.id(),
                                way.name(),
                                way.note(),
                                way.pieces().stream().map(this::piece).toList()))));
    }

    private void know(Stored<RateCard.Id, RateCard> card) {
        card.facts().rates().stream().map(Rate::code).forEach(code -> cards.put(code, card.id()));
    }

    private Supplier.Id supplier(String name) {
        return into.sources()
                .suppliers()
                .named(name)
                .map(Stored::id)
                .orElseGet(() -> DemoData.must(into.sources().suppliers().add(new Supplier(name)))
                        .id());
    }

    private Way.Piece piece(DemoWaysFile.Piece piece) {
        Way.Source source = piece.buy()
                .<Way.Source>map(code -> new Way.Bought(named(offers, code)))
                .or(() -> piece.rent().map(code -> new Way.Rented(named(cards, code), code)))
                .orElseGet(() -> new Way.OwnUnit(into.shelf()
                        .units()
                        .tagged(piece.unit().orElseThrow())
                        .orElseThrow()
                        .id()));
        return new Way.Piece(source, piece.glass().stream().map(this::brought).toList());
    }

    private static <T> T named(Map<String, T> all, String code) {
        return Optional.ofNullable(all.get(code))
                .orElseThrow(() -> new IllegalStateException("the demo has nothing called " + code));
    }

    private Way.Brought brought(DemoWaysFile.Glass glass) {
        return new Way.Brought(model(glass.lens()), glass.front().map(this::model), 1);
    }

    private LensModel.Id model(DemoWaysFile.Named named) {
        return into.shelf()
                .models()
                .named(named.maker(), named.model())
                .orElseThrow(() -> new IllegalStateException("the demo has no " + named))
                .id();
    }
}
