package dayglass.app.demo;

import dayglass.base.Currency;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Rate;
import dayglass.job.Brief;
import dayglass.job.Job;
import dayglass.shelf.BriefJson;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.PurchaseReader;
import dayglass.wire.costing.RentalReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What {@code demo-data/ways.json} says. What a way takes is named by its code, its tag or its model. */
record DemoWaysFile(Brief brief, List<Card> cards, List<Offered> offers, List<Way> ways) {
    private static final String LATER = "named later";

    /** Some rates of a supplier. */
    record Card(String supplier, String name, LocalDate effectiveFrom, List<Rate> rates) {}

    record Offered(String supplier, PurchaseOffer.Offer offer) {}

    record Way(String name, String note, List<Piece> pieces) {}

    /** One of the three says where it comes from. */
    record Piece(Optional<String> buy, Optional<String> rent, Optional<String> unit, List<Glass> glass) {}

    record Glass(Named lens, Optional<Named> front) {}

    record Named(String maker, String model) {}

    static Reader<DemoWaysFile> reader(Job.Id job, Currency currency) {
        return Fields.object(fields -> {
            Read<Brief> brief = fields.required("brief", BriefJson.reader(job));
            Read<List<Card>> cards =
                    fields.required("rateCards", Readers.list(Fields.object(card -> card(card, currency))));
            Read<List<Offered>> offers =
                    fields.required("purchaseOffers", Readers.list(Fields.object(offer -> offered(offer, currency))));
            Read<List<Way>> ways = fields.required("ways", Readers.list(Fields.object(DemoWaysFile::way)));
            return fields.build(() -> new DemoWaysFile(brief.get(), cards.get(), offers.get(), ways.get()));
        });
    }

    private static Read<Card> card(Fields fields, Currency currency) {
        Read<String> supplier = fields.required("supplier", Readers.name());
        Read<String> name = fields.required("name", Readers.name());
        Read<LocalDate> from = fields.required("effectiveFrom", Readers.date());
        Read<List<Rate>> rates = fields.required(
                "rates", Readers.list(RentalReader.rate(currency, LATER).map(Rate::of)));
        return fields.build(() -> new Card(supplier.get(), name.get(), from.get(), rates.get()));
    }

    private static Read<Offered> offered(Fields fields, Currency currency) {
        Read<String> supplier = fields.required("supplier", Readers.name());
        Read<PurchaseOffer.Offer> offer = fields.required(
                "offer",
                PurchaseReader.offer(currency, LATER, PurchaseOffer.Offer.ANY_FIRST_DAY)
                        .map(PurchaseOffer.Offer::of));
        return fields.build(() -> new Offered(supplier.get(), offer.get()));
    }

    private static Read<Way> way(Fields fields) {
        Read<String> name = fields.required("name", Readers.name());
        Read<String> note = fields.required("note", Readers.name());
        Read<List<Piece>> pieces = fields.required("pieces", Readers.list(Fields.object(DemoWaysFile::piece)));
        return fields.build(() -> new Way(name.get(), note.get(), pieces.get()));
    }

    private static Read<Piece> piece(Fields fields) {
        Read<Optional<String>> buy = fields.optional("buy", Readers.name());
        Read<Optional<String>> rent = fields.optional("rent", Readers.name());
        Read<Optional<String>> unit = fields.optional("unit", Readers.name());
        Read<List<Glass>> glass = fields.optional("glass", Readers.list(Fields.object(DemoWaysFile::glass)), List.of());
        return fields.build(() -> new Piece(buy.get(), rent.get(), unit.get(), glass.get()));
    }

    private static Read<Glass> glass(Fields fields) {
        Read<Named> lens = named(fields);
        Read<Optional<Named>> front = fields.optional("front", Fields.object(DemoWaysFile::named));
        return fields.build(() -> new Glass(lens.get(), front.get()));
    }

    private static Read<Named> named(Fields fields) {
        Read<String> maker = fields.required("maker", Readers.name());
        Read<String> model = fields.required("model", Readers.name());
        return maker.isGood() && model.isGood() ? Read.good(new Named(maker.get(), model.get())) : Read.bad();
    }
}
