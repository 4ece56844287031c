package dayglass.web.api.catalogue;

import dayglass.base.Currency;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.RateCards;
import dayglass.catalogue.Supplier;
import dayglass.shelf.RateJson;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** {@code /api/rate-cards}. */
public final class RateCardApi {
    private RateCardApi() {}

    public static Resource<RateCard.Id, RateCard> of(RateCards cards) {
        return new Resource<>(new Representation<>(
                "/api/rate-cards",
                "rate card",
                cards,
                RateCard.Id::new,
                Fields.object(RateCardApi::read),
                RateCardApi::write));
    }

    private static Read<RateCard> read(Fields fields) {
        Read<Supplier.Id> supplier = fields.required("supplierId", Ids.id(Supplier.Id::new));
        Read<String> name = fields.required("name", Readers.name());
        Read<Currency> currency = fields.required("currency", Decimals.currency());
        Read<LocalDate> from = fields.required("effectiveFrom", Readers.date());
        Read<List<Rate>> rates = fields.required("rates", rates(currency));
        return fields.build(() -> new RateCard(supplier.get(), name.get(), currency.get(), from.get(), rates.get()));
    }

    /** Without a currency the amounts cannot be read, and nothing is told of them. */
    private static Reader<List<Rate>> rates(Read<Currency> currency) {
        if (!currency.isGood()) {
            return (json, place) -> Read.bad();
        }
        Reader<List<Rate>> rates = Readers.list(RateJson.reader(currency.get()));
        return (json, place) -> {
            Read<List<Rate>> read = rates.read(json, place);
            read.found().ifPresent(found -> requireDistinct(found, json, place));
            return read;
        };
    }

    /** Only where every rate could be read does its place among those read tell its place in the list. */
    private static void requireDistinct(List<Rate> rates, Json json, Place place) {
        Set<String> codes = new HashSet<>();
        boolean allRead = json instanceof Json.Arr list && list.entries().size() == rates.size();
        for (int at = 0; allRead && at < rates.size(); at++) {
            if (!codes.add(rates.get(at).code())) {
                place.entry(at).member("id").fault("an earlier rate of this card has this id: rename one");
            }
        }
    }

    private static void write(Json.Members members, RateCard card) {
        members.put("supplierId", card.supplier().number())
                .put("name", card.name())
                .put("currency", card.currency().code())
                .put("effectiveFrom", card.effectiveFrom().toString())
                .put(
                        "rates",
                        Json.list(card.rates().stream().map(RateJson::write).toList()));
    }
}
