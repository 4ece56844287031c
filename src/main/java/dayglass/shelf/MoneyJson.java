package dayglass.shelf;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;

/** An amount with its currency: {@code {"amount": "1234.50", "currency": "EUR"}}. */
public final class MoneyJson {
    private MoneyJson() {}

    public static Reader<Money> money() {
        return Fields.object(fields -> {
            Read<Money> money = money(fields);
            return fields.build(money::get);
        });
    }

    /** The amount and the currency among an object's members. */
    static Read<Money> money(Fields fields) {
        Read<Currency> currency = fields.required("currency", Decimals.currency());
        return fields.required("amount", Decimals.money(currency));
    }

    public static Json write(Money money) {
        return put(Json.object(), money).build();
    }

    static Json.Members put(Json.Members members, Money money) {
        return members.put("amount", money.amount())
                .put("currency", money.currency().code());
    }
}
