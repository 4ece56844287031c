package dayglass.inventory.worth;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.inventory.LensSet;
import dayglass.inventory.life.MoneySoFar;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A set by what its members come to together; each is weighed and rented by itself, so what a matched set sells for above
 * that is not in it.
 *
 * @param members those that are the house's own
 * @param others how many members are not
 */
public record SetWorth(Stored<LensSet.Id, LensSet> set, List<UnitWorth> members, int others) {
    public SetWorth {
        members = List.copyOf(members);
    }

    /** By currency. */
    public List<Money> cost() {
        return MoneySoFar.totals(
                members.stream().flatMap(each -> each.money().cost().stream()).toList());
    }

    /** By currency. */
    public List<Money> earned() {
        return MoneySoFar.totals(
                members.stream().flatMap(each -> each.money().earned().stream()).toList());
    }

    /** By currency. */
    public List<Money> promised() {
        return MoneySoFar.totals(members.stream()
                .flatMap(each -> each.money().promised().stream())
                .toList());
    }

    public int daysOut() {
        return members.stream().mapToInt(each -> each.lastYear().out().size()).sum();
    }

    public int daysAvailable() {
        return members.stream()
                .mapToInt(each -> each.lastYear().daysAvailable())
                .sum();
    }

    /** Empty where it cannot be told of some member, or where they are of several currencies. */
    public Optional<Money> today() {
        return sum(UnitWorth::today);
    }

    /** Empty where it cannot be told of some member, or where they are of several currencies. */
    public Optional<Money> gain() {
        return sum(UnitWorth::gain);
    }

    private Optional<Money> sum(Function<UnitWorth, Optional<Money>> what) {
        List<Money> known =
                members.stream().flatMap(each -> what.apply(each).stream()).toList();
        Stream<String> currencies = known.stream().map(money -> money.currency().code());
        return known.size() < members.size() || currencies.distinct().count() > 1
                ? Optional.empty()
                : known.stream().reduce(Money::plus);
    }

    /** {@code keep}, {@code sell} or {@code either}; empty where it cannot be told. */
    public String word() {
        return gain().map(gain -> gain.signum() > 0 ? "keep" : gain.signum() < 0 ? "sell" : "either")
                .orElse("");
    }
}
