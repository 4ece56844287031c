package dayglass.inventory.worth;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Stored;
import dayglass.cost.ownership.Growths;
import dayglass.cost.ownership.OwnSales;
import dayglass.cost.verdict.JobKind;
import dayglass.house.House;
import dayglass.inventory.Unit;
import dayglass.inventory.life.Lettings;
import dayglass.inventory.life.MoneySoFar;
import dayglass.inventory.life.UnitFigures;
import dayglass.inventory.life.UnitRecords;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Weighs one unit after another by the same footing, house and moment. */
record Weighing(Footing footing, House house, Instant now, SimilarRates rates, Growths growths) {
    private static final int YEAR_DAYS = 365;

    UnitWorth of(Stored<Unit.Id, Unit> unit, UnitRecords records, Lettings lettings, List<OwnSales.Sale> salesOfModel) {
        UnitFigures life = UnitFigures.of(records, lettings, house, now);
        Optional<ValueToday> value = ValueToday.of(
                unit.facts(), salesOfModel, new ValueToday.Basis(footing.lossPerYear(), today(), growths));
        List<JobKind> jobs = OwnUse.within(lastYear(), records, lettings.bookings(), house, now);
        Optional<Money> insured = value.map(known -> insured(unit.facts(), known.today()));
        Optional<SimilarRates.Found> found = jobs.isEmpty()
                ? Optional.of(new SimilarRates.Found(List.of(), List.of()))
                : insured.flatMap(amount -> rates.of(unit.facts(), amount, footing));
        Optional<YearMore> more = value.flatMap(known -> found.map(terms -> YearMore.of(
                new YearMore.Facts(
                        known,
                        insured.orElse(known.today()),
                        serviceAYear(life, known.today().currency()),
                        lettingAYear(lettings, known.today().currency()),
                        jobs),
                footing,
                terms,
                growths)));
        return new UnitWorth(unit, life.money(), life.lastYear(), life.everSince(), value, more, unknown(value, found));
    }

    private static String unknown(Optional<ValueToday> value, Optional<SimilarRates.Found> found) {
        if (value.isEmpty()) {
            return "its price or the day it was bought is not recorded";
        }
        return found.isEmpty() ? "no card in force has a rate for what it serves, and there is no rule of thumb" : "";
    }

    private LocalDate today() {
        return now.atZone(house.zone()).toLocalDate();
    }

    private DateRange lastYear() {
        return DateRange.inclusive(today().minusDays(YEAR_DAYS - 1L), today());
    }

    private static Money insured(Unit unit, Money today) {
        return unit.value()
                .map(Unit.Value::amount)
                .filter(amount -> amount.currency().equals(today.currency()))
                .orElse(today);
    }

    /** What the bench took on average a year since the unit came; all of it where that is less than a year ago. */
    private Money serviceAYear(UnitFigures life, Currency currency) {
        Money sum = Money.zero(currency);
        for (MoneySoFar.Line line : life.benchCost()) {
            if (line.amount().currency().equals(currency)) {
                sum = sum.plus(line.amount());
            }
        }
        int days = Math.max(YEAR_DAYS, life.everSince().daysHeld());
        BigDecimal aYear = sum.major()
                .multiply(BigDecimal.valueOf(YEAR_DAYS))
                .divide(BigDecimal.valueOf(days), currency.decimals(), RoundingMode.HALF_UP);
        return Money.of(currency, aYear);
    }

    private Money lettingAYear(Lettings lettings, Currency currency) {
        return lettings.earned().stream()
                .filter(line -> line.on().filter(lastYear()::contains).isPresent())
                .map(MoneySoFar.Line::amount)
                .filter(amount -> amount.currency().equals(currency))
                .reduce(Money.zero(currency), Money::plus);
    }
}
