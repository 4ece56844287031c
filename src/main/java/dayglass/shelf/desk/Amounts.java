package dayglass.shelf.desk;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.wire.Decimals;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;

/** Amounts that may be below nothing, as those that take others back are. */
final class Amounts {
    private Amounts() {}

    static Reader<Money> signed(Read<Currency> currency) {
        Reader<Money> plain = Decimals.money(currency);
        return (json, place) -> {
            boolean negative = json instanceof Json.Text text && text.value().startsWith("-");
            Json digits = negative ? Json.text(((Json.Text) json).value().substring(1)) : json;
            Read<Money> read = plain.read(digits, place);
            return negative && read.isGood() ? Read.good(read.get().times(-1)) : read;
        };
    }

    static Json write(Money money) {
        return Json.text(money.amount());
    }

    static String plain(Percent percent) {
        return Decimals.withoutTrailingNoughts(percent.value()).toPlainString();
    }
}
