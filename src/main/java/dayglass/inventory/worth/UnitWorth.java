package dayglass.inventory.worth;

import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.inventory.Unit;
import dayglass.inventory.life.MoneySoFar;
import dayglass.inventory.life.Utilisation;
import java.util.Optional;

/**
 * One unit of the house's own.
 *
 * @param money so far, with what letting brought
 * @param lastYear days out of the 365 that end today
 * @param value empty where it cannot be told
 * @param yearMore empty where it cannot be told
 * @param unknown why something cannot be told; empty where all can
 */
public record UnitWorth(
        Stored<Unit.Id, Unit> unit,
        MoneySoFar money,
        Utilisation lastYear,
        Utilisation everSince,
        Optional<ValueToday> value,
        Optional<YearMore> yearMore,
        String unknown) {

    public Optional<Money> today() {
        return value.map(ValueToday::today);
    }

    public Optional<Money> gain() {
        return yearMore.map(YearMore::gain);
    }
}
