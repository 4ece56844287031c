package dayglass.shelf.desk;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.desk.price.PackageAsked;
import dayglass.desk.price.PackagePrice;
import dayglass.desk.quote.Customer;
import dayglass.desk.quote.MakeQuote;
import dayglass.desk.quote.Promise;
import dayglass.desk.quote.Quote;
import dayglass.house.Person;
import dayglass.shelf.MoneyJson;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Quotes: what is wanted of one, and what one is. */
public final class QuoteJson {
    private static final int LONGEST_CONTACT = 1_000;
    private static final int LONGEST_TERMS = 10_000;
    private static final Map<String, Quote.Decision> DECISIONS =
            Arrays.stream(Quote.Decision.values()).collect(Collectors.toMap(Quote.Decision::word, each -> each));

    private QuoteJson() {}

    /** A package with its customer. */
    public static Reader<MakeQuote.Wanted> wanted(LocalDate today) {
        return Fields.object(fields -> {
            Read<Customer> customer = fields.required("customer", customer());
            Read<PackageAsked> asked = PackageJson.members(fields, today);
            Read<Optional<LocalDate>> until = fields.optional("validUntil", Readers.date());
            Read<Optional<Money>> deposit = fields.optional("deposit", MoneyJson.money());
            return fields.build(() -> new MakeQuote.Wanted(customer.get(), asked.get(), until.get(), deposit.get()));
        });
    }

    /** What is to be wanted to get the same promise again, on the day that it is wanted. */
    public static Json wanted(Quote quote) {
        Json.Members members = Json.object().put("customer", write(quote.customer()));
        PackageJson.write(members, quote.now().price().asked());
        return members.build();
    }

    public static Reader<Customer> customer() {
        return Fields.object(fields -> {
            Read<String> name = fields.required("name", Readers.name());
            Read<String> contact = fields.optional("contact", Readers.prose(LONGEST_CONTACT), "");
            Read<String> production = fields.optional("production", Readers.name(), "");
            return fields.build(() -> new Customer(name.get(), contact.get(), production.get()));
        });
    }

    static Json write(Customer customer) {
        Json.Members members = Json.object().put("name", customer.name());
        if (!customer.contact().isEmpty()) {
            members.put("contact", customer.contact());
        }
        if (!customer.production().isEmpty()) {
            members.put("production", customer.production());
        }
        return members.build();
    }

    static Reader<Promise> promise() {
        return Fields.object(fields -> {
            Read<PackagePrice> price = fields.required("price", PriceJson.reader());
            Read<LocalDate> on = fields.required("issuedOn", Readers.date());
            Read<Person.Id> by = fields.required("issuedBy", Ids.id(Person.Id::new));
            Read<LocalDate> until = fields.required("validUntil", Readers.date());
            Read<Money> deposit = fields.required("deposit", deposit(price));
            Read<String> terms = fields.optional("terms", Readers.prose(LONGEST_TERMS), "");
            return fields.build(
                    () -> new Promise(price.get(), on.get(), by.get(), until.get(), deposit.get(), terms.get()));
        });
    }

    private static Reader<Money> deposit(Read<PackagePrice> price) {
        Read<Currency> currency = price.map(PackagePrice::currency);
        return Amounts.signed(currency);
    }

    static Json write(Promise promise) {
        Json.Members members = Json.object()
                .put("price", PriceJson.write(promise.price()))
                .put("issuedOn", promise.issuedOn().toString())
                .put("issuedBy", promise.issuedBy().number())
                .put("validUntil", promise.validUntil().toString())
                .put("deposit", Amounts.write(promise.deposit()));
        if (!promise.terms().isEmpty()) {
            members.put("terms", promise.terms());
        }
        return members.build();
    }

    /** A quote as it is kept. */
    public static Reader<Quote> reader() {
        return Fields.object(fields -> {
            Read<Integer> number = fields.required("number", Readers.whole(1, Integer.MAX_VALUE));
            Read<Customer> customer = fields.required("customer", customer());
            Read<List<Promise>> revisions = fields.required("revisions", Readers.list(promise()));
            Read<Quote.Decision> decision = fields.required("decision", Readers.word(DECISIONS));
            Read<String> why = fields.optional("why", Readers.anyText(), "");
            return fields.build(
                    () -> new Quote(number.get(), customer.get(), revisions.get(), decision.get(), why.get()));
        });
    }

    public static Json.Obj write(Quote quote) {
        Json.Members members = Json.object();
        write(members, quote);
        return members.build();
    }

    public static void write(Json.Members members, Quote quote) {
        members.put("number", quote.number())
                .put("customer", write(quote.customer()))
                .put("decision", quote.decision().word());
        if (!quote.why().isEmpty()) {
            members.put("why", quote.why());
        }
        members.put(
                "revisions",
                Json.list(quote.revisions().stream().map(QuoteJson::write).toList()));
    }
}
