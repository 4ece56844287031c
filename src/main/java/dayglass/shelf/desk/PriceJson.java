package dayglass.shelf.desk;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.price.PackagePrice.Missing;
import dayglass.desk.price.PricedLine;
import dayglass.desk.price.PricedLine.AddOn;
import dayglass.desk.price.PricedLine.Foreign;
import dayglass.desk.price.PricedLine.RentedIn;
import dayglass.inventory.Unit;
import dayglass.shelf.MoneyJson;
import dayglass.shelf.RateJson;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The price of a package with all its lines. Sums are written for those who read and left aside when it is read back. */
public final class PriceJson {
    private static final int MOST = 1_000_000;
    private static final Map<String, Mark> MARKS =
            Arrays.stream(Mark.values()).collect(Collectors.toMap(Mark::word, mark -> mark));

    private PriceJson() {}

    /** Of what was kept. */
    static Reader<PackagePrice> reader() {
        return Fields.object(fields -> {
            Read<Currency> currency = fields.required("currency", Decimals.currency());
            Read<LocalDate> on = fields.required("pricedOn", Readers.date());
            Read<PackageAsked> asked = fields.required("asked", PackageJson.reader(LocalDate.EPOCH));
            Read<List<PricedLine>> lines =
                    fields.required("lines", Readers.list(Fields.object(each -> line(each, currency))));
            Read<List<Missing>> shorts = fields.required("shorts", Readers.list(Fields.object(PriceJson::missing)));
            Read<Money> value = fields.required("replacementValue", Amounts.signed(currency));
            Read<List<String>> without = fields.required("withoutValue", Readers.list(Readers.anyText()));
            for (String sum : List.of("hire", "discount", "trips", "charges", "waivers", "taxes", "net", "total")) {
                fields.optional(sum, (json, place) -> Read.good(json));
            }
            return fields.build(() -> new PackagePrice(
                    asked.get(), currency.get(), on.get(), lines.get(), shorts.get(), value.get(), without.get()));
        });
    }

    private static Read<PricedLine> line(Fields fields, Read<Currency> currency) {
        Reader<Money> money = Amounts.signed(currency);
        Read<Integer> line = fields.required("line", Readers.whole(0, MOST));
        Read<String> what = fields.required("what", Readers.anyText());
        Read<List<Unit.Id>> units = fields.required("units", Readers.list(Ids.id(Unit.Id::new)));
        Read<LocalDate> first = fields.required("firstDay", Readers.date());
        Read<LocalDate> last = fields.required("lastDay", Readers.date());
        Read<String> how = fields.required("how", Readers.anyText());
        Read<Money> hire = fields.required("hire", money);
        Read<Percent> off = fields.required("discountPercent", Decimals.percent(0, 100));
        Read<Money> discount = fields.required("discount", money);
        Read<Money> trip = fields.required("trip", money);
        Read<List<AddOn>> addOns = fields.required("addOns", Readers.list(Fields.object(each -> addOn(each, money))));
        Read<Money> total = fields.required("total", money);
        Read<Money> late = fields.required("lateDay", money);
        Read<Rate> rate = currency.isGood() ? fields.required("rate", RateJson.reader(currency.get())) : Read.bad();
        Read<Optional<RentedIn>> from = fields.optional("rentedIn", Fields.object(each -> rentedIn(each, money)));
        return fields.build(() -> new PricedLine(
                line.get(),
                what.get(),
                units.get(),
                DateRange.inclusive(first.get(), last.get()),
                how.get(),
                hire.get(),
                off.get(),
                discount.get(),
                trip.get(),
                addOns.get(),
                total.get(),
                late.get(),
                rate.get(),
                from.get()));
    }

    private static Read<AddOn> addOn(Fields fields, Reader<Money> money) {
        Read<String> name = fields.required("name", Readers.anyText());
        Read<Mark> mark = fields.required("mark", Readers.word(MARKS));
        Read<Money> amount = fields.required("amount", money);
        return fields.build(() -> new AddOn(name.get(), mark.get(), amount.get()));
    }

    private static Read<RentedIn> rentedIn(Fields fields, Reader<Money> money) {
        Read<String> supplier = fields.required("supplier", Readers.anyText());
        Read<Money> cost = fields.required("cost", money);
        Read<Map<String, Money>> taxes = fields.optional("taxes", Readers.words(money), Map.of());
        Read<Optional<Foreign>> foreign = fields.optional("foreign", Fields.object(PriceJson::foreign));
        fields.optional("margin", (json, place) -> Read.good(json));
        return fields.build(() -> new RentedIn(supplier.get(), cost.get(), taxes.get(), foreign.get()));
    }

    private static Read<Foreign> foreign(Fields fields) {
        Read<Money> cost = fields.required("cost", MoneyJson.money());
        Read<Map<String, Money>> taxes =
                fields.optional("taxes", Readers.words(Decimals.money(cost.map(Money::currency))), Map.of());
        Read<BigDecimal> rate = fields.required("budgetRate", Decimals.positive());
        return fields.build(() -> new Foreign(cost.get(), taxes.get(), rate.get()));
    }

    private static Read<Missing> missing(Fields fields) {
        Read<Integer> line = fields.required("line", Readers.whole(0, MOST));
        Read<String> what = fields.required("what", Readers.anyText());
        Read<LocalDate> first = fields.required("firstDay", Readers.date());
        Read<LocalDate> last = fields.required("lastDay", Readers.date());
        Read<Boolean> rentedIn = fields.required("rentedIn", Readers.yesOrNo());
        Read<String> remedy = fields.optional("remedy", Readers.anyText(), "");
        return fields.build(() -> new Missing(
                line.get(), what.get(), DateRange.inclusive(first.get(), last.get()), rentedIn.get(), remedy.get()));
    }

    public static Json.Obj write(PackagePrice price) {
        Json.Members members = Json.object();
        write(members, price);
        return members.build();
    }

    public static void write(Json.Members members, PackagePrice price) {
        members.put("currency", price.currency().code())
                .put("pricedOn", price.pricedOn().toString())
                .put("asked", PackageJson.write(price.asked()))
                .put(
                        "lines",
                        Json.list(price.lines().stream().map(PriceJson::line).toList()))
                .put(
                        "shorts",
                        Json.list(
                                price.shorts().stream().map(PriceJson::missing).toList()))
                .put("hire", Amounts.write(price.hire()))
                .put("discount", Amounts.write(price.discount()))
                .put("trips", Amounts.write(price.trips()))
                .put("charges", sums(price.addOns(Mark.CHARGE)))
                .put("waivers", sums(price.addOns(Mark.WAIVER)))
                .put("taxes", sums(price.taxes()))
                .put("net", Amounts.write(price.net()))
                .put("total", Amounts.write(price.total()))
                .put("replacementValue", Amounts.write(price.replacementValue()))
                .put("withoutValue", Json.texts(price.withoutValue()));
    }

    private static Json sums(Map<String, Money> sums) {
        Json.Members members = Json.object();
        sums.forEach((name, amount) -> members.put(name, amount.amount()));
        return members.build();
    }

    private static Json line(PricedLine line) {
        Json.Members members = Json.object()
                .put("line", line.line())
                .put("what", line.what())
                .put("units", Ids.list(line.units()))
                .put("firstDay", line.dates().from().toString())
                .put("lastDay", line.dates().lastDay().toString())
                .put("how", line.how())
                .put("hire", Amounts.write(line.hire()))
                .put("discountPercent", Amounts.plain(line.off()))
                .put("discount", Amounts.write(line.discount()))
                .put("trip", Amounts.write(line.trip()))
                .put(
                        "addOns",
                        Json.list(line.addOns().stream()
                                .map(addOn -> Json.object()
                                        .put("name", addOn.name())
                                        .put("mark", addOn.mark().word())
                                        .put("amount", addOn.amount().amount())
                                        .build())
                                .toList()))
                .put("total", Amounts.write(line.total()))
                .put("lateDay", Amounts.write(line.lateDay()))
                .put("rate", RateJson.write(line.rate()));
        line.rentedIn()
                .ifPresent(from ->
                        members.put("rentedIn", rentedIn(from, line.margin().orElseThrow())));
        return members.build();
    }

    private static Json rentedIn(RentedIn from, Money margin) {
        Json.Members members = Json.object()
                .put("supplier", from.supplier())
                .put("cost", from.cost().amount())
                .put("margin", margin.amount());
        taxes(members, from.taxes());
        from.foreign()
                .ifPresent(foreign -> members.put(
                        "foreign",
                        taxes(Json.object().put("cost", MoneyJson.write(foreign.cost())), foreign.taxes())
                                .put("budgetRate", foreign.rate().toPlainString())
                                .build()));
        return members.build();
    }

    /** Of those before which taxes did not stand apart nothing is said. */
    private static Json.Members taxes(Json.Members members, Map<String, Money> taxes) {
        return taxes.isEmpty() ? members : members.put("taxes", sums(taxes));
    }

    private static Json missing(Missing missing) {
        Json.Members members = Json.object()
                .put("line", missing.line())
                .put("what", missing.what())
                .put("firstDay", missing.dates().from().toString())
                .put("lastDay", missing.dates().lastDay().toString())
                .put("rentedIn", missing.rentedIn());
        if (!missing.remedy().isEmpty()) {
            members.put("remedy", missing.remedy());
        }
        return members.build();
    }
}
