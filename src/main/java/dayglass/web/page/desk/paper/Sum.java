package dayglass.web.page.desk.paper;

import dayglass.base.Money;
import dayglass.web.page.picture.Words;

/**
 * A line among the totals.
 *
 * @param strong what the others come to
 */
public record Sum(String name, String amount, boolean strong) {
    static Sum of(String name, Money amount) {
        return new Sum(name, Words.money(amount), false);
    }

    static Sum strong(String name, Money amount) {
        return new Sum(name, Words.money(amount), true);
    }
}
