package dayglass.shelf.desk;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.quote.Customer;
import dayglass.desk.quote.Promise;
import dayglass.desk.quote.Quote;
import dayglass.desk.rental.Charge;
import dayglass.desk.rental.Rental;
import dayglass.desk.rental.Rental.Check;
import dayglass.desk.rental.Rental.Deposit;
import dayglass.desk.rental.Rental.Ending;
import dayglass.desk.rental.Rental.Placed;
import dayglass.desk.rental.SupplierOrder;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Occupation;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A rental as it is kept; moments are instants in UTC (RFC 3339). */
public final class RentalJson {
    private static final int MOST = 1_000_000;
    private static final Map<String, Charge.Kind> KINDS =
            Arrays.stream(Charge.Kind.values()).collect(Collectors.toMap(Charge.Kind::word, kind -> kind));

    private RentalJson() {}

    public static Reader<Rental> reader() {
        return Fields.object(fields -> {
            Read<Integer> number = fields.required("number", Readers.whole(1, Integer.MAX_VALUE));
            Read<Quote.Id> quote = fields.required("quoteId", Ids.id(Quote.Id::new));
            Read<Customer> customer = fields.required("customer", QuoteJson.customer());
            Read<Promise> promise = fields.required("promise", QuoteJson.promise());
            Read<Currency> currency = promise.map(Promise::price).map(PackagePrice::currency);
            Read<List<Placed>> placed = fields.required("placed", Readers.list(Fields.object(RentalJson::placed)));
            Read<List<Charge>> charges =
                    fields.required("charges", Readers.list(Fields.object(each -> charge(each, currency))));
            Read<Deposit> deposit = fields.required("deposit", Fields.object(each -> deposit(each, currency)));
            Read<Optional<Ending>> ending = fields.optional("ending", Fields.object(RentalJson::ending));
            Read<List<SupplierOrder>> orders =
                    fields.optional("orders", Readers.list(SupplierOrderJson.reader()), List.of());
            for (String sum : List.of("owed", "toPay")) {
                fields.optional(sum, (json, place) -> Read.good(json));
            }
            return fields.build(() -> new Rental(
                    number.get(),
                    quote.get(),
                    customer.get(),
                    promise.get(),
                    placed.get(),
                    charges.get(),
                    deposit.get(),
                    ending.get(),
                    orders.get()));
        });
    }

    static Reader<Instant> instant() {
        return Readers.anyText().map(Instant::parse);
    }

    private static Read<Placed> placed(Fields fields) {
        Read<Integer> line = fields.required("line", Readers.whole(0, MOST));
        Read<Unit.Id> unit = fields.required("unitId", Ids.id(Unit.Id::new));
        Read<Occupation.Id> booking = fields.required("bookingId", Ids.id(Occupation.Id::new));
        Read<Boolean> replaced = fields.optional("replaced", Readers.yesOrNo(), false);
        Read<Optional<Check>> out = fields.optional("out", Fields.object(RentalJson::check));
        Read<Optional<Check>> back = fields.optional("back", Fields.object(RentalJson::check));
        return fields.build(
                () -> new Placed(line.get(), unit.get(), booking.get(), replaced.get(), out.get(), back.get()));
    }

    private static Read<Check> check(Fields fields) {
        Read<List<String>> accessories = fields.required("accessories", Readers.list(Readers.anyText()));
        Read<String> condition = fields.required("condition", Readers.anyText());
        Read<Person.Id> by = fields.required("by", Ids.id(Person.Id::new));
        Read<Instant> at = fields.required("at", instant());
        return fields.build(() -> new Check(accessories.get(), condition.get(), by.get(), at.get()));
    }

    private static Read<Charge> charge(Fields fields, Read<Currency> currency) {
        Reader<Money> money = Amounts.signed(currency);
        Read<Charge.Kind> kind = fields.required("kind", Readers.word(KINDS));
        Read<Optional<Unit.Id>> unit = fields.optional("unitId", Ids.id(Unit.Id::new));
        Read<Optional<Integer>> line = fields.optional("line", Readers.whole(0, MOST));
        Read<Integer> days = fields.optional("days", Readers.whole(-MOST, MOST), 0);
        Read<String> words = fields.required("words", Readers.anyText());
        Read<Money> net = fields.required("net", money);
        Read<List<Charge.Tax>> taxes = fields.required("taxes", Readers.list(Fields.object(each -> tax(each, money))));
        Read<Optional<Integer>> reverses = fields.optional("reverses", Readers.whole(0, MOST));
        Read<Person.Id> by = fields.required("by", Ids.id(Person.Id::new));
        Read<Instant> at = fields.required("at", instant());
        fields.optional("total", (json, place) -> Read.good(json));
        return fields.build(() -> new Charge(
                kind.get(),
                unit.get(),
                line.get(),
                days.get(),
                words.get(),
                net.get(),
                taxes.get(),
                reverses.get(),
                by.get(),
                at.get()));
    }

    private static Read<Charge.Tax> tax(Fields fields, Reader<Money> money) {
        Read<String> code = fields.required("code", Readers.anyText());
        Read<Money> amount = fields.required("amount", money);
        return fields.build(() -> new Charge.Tax(code.get(), amount.get()));
    }

    private static Read<Deposit> deposit(Fields fields, Read<Currency> currency) {
        Reader<Money> money = Amounts.signed(currency);
        Read<Money> taken = fields.required("taken", money);
        Read<Money> kept = fields.required("kept", money);
        Read<Money> returned = fields.required("returned", money);
        return fields.build(() -> new Deposit(taken.get(), kept.get(), returned.get()));
    }

    private static Read<Ending> ending(Fields fields) {
        Read<Boolean> cancelled = fields.required("cancelled", Readers.yesOrNo());
        Read<Optional<Integer>> invoice = fields.optional("invoice", Readers.whole(1, Integer.MAX_VALUE));
        Read<Person.Id> by = fields.required("by", Ids.id(Person.Id::new));
        Read<Instant> at = fields.required("at", instant());
        return fields.build(
                () -> new Ending(cancelled.get(), invoice.get().map(Integer::longValue), by.get(), at.get()));
    }

    public static Json.Obj write(Rental rental) {
        Json.Members members = Json.object();
        write(members, rental);
        return members.build();
    }

    public static void write(Json.Members members, Rental rental) {
        members.put("number", rental.number())
                .put("quoteId", rental.quote().number())
                .put("customer", QuoteJson.write(rental.customer()))
                .put("promise", QuoteJson.write(rental.promise()))
                .put(
                        "placed",
                        Json.list(
                                rental.placed().stream().map(RentalJson::write).toList()))
                .put(
                        "charges",
                        Json.list(
                                rental.charges().stream().map(RentalJson::write).toList()))
                .put("deposit", write(rental.deposit()));
        rental.ending().ifPresent(ending -> members.put("ending", write(ending)));
        if (!rental.orders().isEmpty()) {
            members.put(
                    "orders",
                    Json.list(rental.orders().stream()
                            .map(SupplierOrderJson::write)
                            .toList()));
        }
        members.put("owed", Amounts.write(rental.owed())).put("toPay", Amounts.write(rental.toPay()));
    }

    static Json write(Deposit deposit) {
        return Json.object()
                .put("taken", Amounts.write(deposit.taken()))
                .put("kept", Amounts.write(deposit.kept()))
                .put("returned", Amounts.write(deposit.returned()))
                .build();
    }

    private static Json write(Placed placed) {
        Json.Members members = Json.object()
                .put("line", placed.line())
                .put("unitId", placed.unit().number())
                .put("bookingId", placed.booking().number());
        if (placed.replaced()) {
            members.put("replaced", true);
        }
        placed.out().ifPresent(check -> members.put("out", write(check)));
        placed.back().ifPresent(check -> members.put("back", write(check)));
        return members.build();
    }

    private static Json write(Check check) {
        return Json.object()
                .put("accessories", Json.texts(check.accessories()))
                .put("condition", check.condition())
                .put("by", check.by().number())
                .put("at", check.at().toString())
                .build();
    }

    private static Json write(Charge charge) {
        Json.Members members = Json.object().put("kind", charge.kind().word());
        charge.unit().ifPresent(unit -> members.put("unitId", unit.number()));
        charge.line().ifPresent(line -> members.put("line", line));
        if (charge.days() != 0) {
            members.put("days", charge.days());
        }
        members.put("words", charge.words())
                .put("net", Amounts.write(charge.net()))
                .put(
                        "taxes",
                        Json.list(charge.taxes().stream()
                                .map(tax -> Json.object()
                                        .put("code", tax.code())
                                        .put("amount", tax.amount().amount())
                                        .build())
                                .toList()))
                .put("total", Amounts.write(charge.total()));
        charge.reverses().ifPresent(at -> members.put("reverses", at));
        return members.put("by", charge.by().number())
                .put("at", charge.at().toString())
                .build();
    }

    private static Json write(Ending ending) {
        Json.Members members = Json.object().put("cancelled", ending.cancelled());
        ending.invoice().ifPresent(number -> members.put("invoice", number));
        return members.put("by", ending.by().number())
                .put("at", ending.at().toString())
                .build();
    }
}
