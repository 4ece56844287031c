package dayglass.shelf;

import dayglass.base.Money;
import dayglass.inventory.Holding;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How a unit is held; {@code kind} says which members there are. */
final class HoldingJson {
    private static final Map<String, Fields.Body<Holding>> BODIES = Map.of(
            "owned", HoldingJson::owned, "rented in", HoldingJson::rentedIn, "consigned", HoldingJson::consigned);

    private static final Reader<String> KIND = Readers.oneOf(List.of("owned", "rented in", "consigned"));

    private HoldingJson() {}

    static Reader<Holding> reader() {
        return Fields.object(fields -> {
            Read<String> kind = fields.required("kind", KIND);
            Fields.Body<Holding> body = kind.found().map(BODIES::get).orElse(null);
            return body == null ? Read.bad() : body.read(fields);
        });
    }

    private static Read<Holding> owned(Fields fields) {
        Read<Optional<LocalDate>> boughtOn = fields.optional("boughtOn", Readers.date());
        Read<Optional<Money>> price = fields.optional("price", MoneyJson.money());
        Read<String> order = fields.optional("order", Readers.name(), "");
        Read<String> invoice = fields.optional("invoice", Readers.name(), "");
        return fields.build(() -> new Holding.Owned(boughtOn.get(), price.get(), order.get(), invoice.get()));
    }

    private static Read<Holding> rentedIn(Fields fields) {
        Read<String> owner = fields.required("owner", Readers.name());
        Read<String> agreement = fields.optional("agreement", Readers.name(), "");
        Read<LocalDate> from = fields.required("from", Readers.date());
        Read<LocalDate> paidUpTo = fields.required("paidUpTo", notBefore(from, "from"));
        Read<LocalDate> dueBackOn = fields.required("dueBackOn", notBefore(from, "from"));
        Read<Optional<Money>> lateDay = fields.optional("lateDay", MoneyJson.money());
        return fields.build(() -> new Holding.RentedIn(
                owner.get(), agreement.get(), from.get(), paidUpTo.get(), dueBackOn.get(), lateDay.get()));
    }

    private static Read<Holding> consigned(Fields fields) {
        Read<String> owner = fields.required("owner", Readers.name());
        Read<String> agreement = fields.optional("agreement", Readers.name(), "");
        Read<LocalDate> from = fields.required("from", Readers.date());
        Read<Optional<LocalDate>> until = fields.optional("until", notBefore(from, "from"));
        return fields.build(() -> new Holding.Consigned(owner.get(), agreement.get(), from.get(), until.get()));
    }

    /** A day that does not come before another, which may be at fault itself. */
    static Reader<LocalDate> notBefore(Read<LocalDate> first, String name) {
        return (json, place) -> {
            Read<LocalDate> day = Readers.date().read(json, place);
            boolean reversed = day.isGood() && first.isGood() && day.get().isBefore(first.get());
            return reversed
                    ? place.fault("comes before \"" + name + "\", " + first.get() + ": change one of the two")
                    : day;
        };
    }

    static Json write(Holding holding) {
        Json.Members members = Json.object().put("kind", holding.word());
        return holding.fold(
                        owned -> owned(members, owned),
                        rentedIn -> rentedIn(members, rentedIn),
                        consigned -> consigned(members, consigned))
                .build();
    }

    private static Json.Members owned(Json.Members members, Holding.Owned owned) {
        owned.boughtOn().ifPresent(day -> members.put("boughtOn", day.toString()));
        owned.price().ifPresent(price -> members.put("price", MoneyJson.write(price)));
        return putUnlessEmpty(putUnlessEmpty(members, "order", owned.order()), "invoice", owned.invoice());
    }

    private static Json.Members rentedIn(Json.Members members, Holding.RentedIn rented) {
        putUnlessEmpty(members.put("owner", rented.owner()), "agreement", rented.agreement())
                .put("from", rented.from().toString())
                .put("paidUpTo", rented.paidUpTo().toString())
                .put("dueBackOn", rented.dueBackOn().toString());
        rented.lateDay().ifPresent(price -> members.put("lateDay", MoneyJson.write(price)));
        return members;
    }

    private static Json.Members consigned(Json.Members members, Holding.Consigned consigned) {
        putUnlessEmpty(members.put("owner", consigned.owner()), "agreement", consigned.agreement())
                .put("from", consigned.from().toString());
        consigned.until().ifPresent(day -> members.put("until", day.toString()));
        return members;
    }

    private static Json.Members putUnlessEmpty(Json.Members members, String name, String text) {
        return text.isEmpty() ? members : members.put(name, text);
    }
}
