package dayglass.books.entry;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Shares;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The amounts of an entry, in its own currency and in the base currency of its job. The base amounts are fixed when it is
 * posted and never worked out again.
 *
 * @param net before tax; negative for a credit or a reversal
 * @param tax of the sign of net, or zero
 * @param baseNet net in the base currency
 */
public record Amounts(Money net, Money tax, Money baseNet, Money baseTax) {
    public Amounts {
        if (!net.currency().equals(tax.currency()) || !baseNet.currency().equals(baseTax.currency())) {
            throw new IllegalArgumentException("net and tax are of one currency");
        }
    }

    /** The amounts at a rate; net and tax are converted once each. */
    public static Amounts at(Exchange exchange, Currency base, Money net, Money tax) {
        return new Amounts(net, tax, exchange.convert(net, base), exchange.convert(tax, base));
    }

    public static Amounts zero(Currency currency, Currency base) {
        return new Amounts(Money.zero(currency), Money.zero(currency), Money.zero(base), Money.zero(base));
    }

    public Money gross() {
        return net.plus(tax);
    }

    public Money baseGross() {
        return baseNet.plus(baseTax);
    }

    public Amounts negated() {
        return new Amounts(net.times(-1), tax.times(-1), baseNet.times(-1), baseTax.times(-1));
    }

    public Amounts plus(Amounts other) {
        return new Amounts(
                net.plus(other.net), tax.plus(other.tax), baseNet.plus(other.baseNet), baseTax.plus(other.baseTax));
    }

    public Amounts minus(Amounts other) {
        return plus(other.negated());
    }

    public boolean isZero() {
        return net.signum() == 0 && tax.signum() == 0 && baseNet.signum() == 0 && baseTax.signum() == 0;
    }

    /**
     * Parts in proportion to weights; each of the four amounts is split by itself by largest remainder, so that each adds
     * up to the whole to the minor unit.
     *
     * @param weights not negative, not all zero
     */
    public List<Amounts> split(List<BigInteger> weights) {
        List<Money> nets = split(net, weights);
        List<Money> taxes = split(tax, weights);
        List<Money> baseNets = split(baseNet, weights);
        List<Money> baseTaxes = split(baseTax, weights);
        List<Amounts> parts = new ArrayList<>();
        for (int at = 0; at < weights.size(); at++) {
            parts.add(new Amounts(nets.get(at), taxes.get(at), baseNets.get(at), baseTaxes.get(at)));
        }
        return parts;
    }

    /** The part that {@code some} of {@code all} makes; the rest and it add up to the whole. */
    public Amounts share(BigInteger some, BigInteger all) {
        return split(List.of(some, all.subtract(some))).get(0);
    }

    private static List<Money> split(Money money, List<BigInteger> weights) {
        return Shares.byWeight(money.minor(), weights).stream()
                .map(part -> new Money(money.currency(), part))
                .toList();
    }
}
