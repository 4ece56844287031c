package dayglass.wire.costing;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.wire.Read;

/** Amounts that stand for a member left out. */
final class Amounts {
    /** Where a request's own currency is at fault: nothing that holds this is ever handed out. */
    private static final Currency UNREAD = new Currency("XXX", 0);

    private Amounts() {}

    static Money zero(Read<Currency> currency) {
        return Money.zero(currency.found().orElse(UNREAD));
    }
}
