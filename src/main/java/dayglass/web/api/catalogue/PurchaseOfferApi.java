package dayglass.web.api.catalogue;

import dayglass.base.Currency;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.PurchaseOffer.Offer;
import dayglass.catalogue.PurchaseOffers;
import dayglass.catalogue.Supplier;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.PurchaseReader;
import java.time.LocalDate;
import java.util.Optional;

/** {@code /api/purchase-offers}. */
public final class PurchaseOfferApi {
    private static final Supplier LEFT_OUT = new Supplier("left out");

    private PurchaseOfferApi() {}

    public static Resource<PurchaseOffer.Id, PurchaseOffer> of(PurchaseOffers offers) {
        return new Resource<>(new Representation<>(
                "/api/purchase-offers",
                "purchase offer",
                offers,
                PurchaseOffer.Id::new,
                Fields.object(PurchaseOfferApi::read),
                PurchaseOfferApi::write));
    }

    private static Read<PurchaseOffer> read(Fields fields) {
        Read<Supplier.Id> supplier = fields.required("supplierId", Ids.id(Supplier.Id::new));
        Read<Currency> currency = fields.required("currency", Decimals.currency());
        Read<Offer> offer = fields.required("offer", offer(currency));
        Read<Optional<LocalDate>> validUntil = fields.optional("validUntil", Readers.date());
        return fields.build(() -> new PurchaseOffer(supplier.get(), currency.get(), offer.get(), validUntil.get()));
    }

    /** Without a currency the amounts cannot be read, and nothing is told of them. */
    private static Reader<Offer> offer(Read<Currency> currency) {
        return currency.isGood()
                ? PurchaseReader.offer(currency.get(), LEFT_OUT.name(), Offer.ANY_FIRST_DAY)
                        .map(Offer::of)
                : (json, place) -> Read.bad();
    }

    private static void write(Json.Members members, PurchaseOffer offer) {
        members.put("supplierId", offer.supplier().number())
                .put("currency", offer.currency().code())
                .put(
                        "offer",
                        OptionWriter.offer(offer.offer().from(LEFT_OUT, Offer.ANY_FIRST_DAY), Offer.ANY_FIRST_DAY));
        offer.validUntil().ifPresent(day -> members.put("validUntil", day.toString()));
    }
}
