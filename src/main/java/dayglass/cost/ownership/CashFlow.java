package dayglass.cost.ownership;

import dayglass.base.Currency;
import dayglass.base.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an ownership takes and gives month by month: money paid is negative. Month 0 is the purchase, the last month the
 * sale. Amounts are kept unrounded in major units; each figure that is handed out is rounded once.
 */
public final class CashFlow {
    private static final BigDecimal TWELVE = BigDecimal.valueOf(Growth.YEAR);

    private final Ownership ownership;
    private final int months;
    private final Map<Flow, BigDecimal[]> flows = new EnumMap<>(Flow.class);
    private final Growths growths;
    private final BigDecimal[] present;

    /** A line of one month, rounded so that the months of one kind add up to the kind's own rounded sum. */
    public record Line(Flow flow, Money amount) {}

    /**
     * One month.
     *
     * @param sum of its lines
     * @param soFar of this month and all before
     */
    public record Month(int month, List<Line> lines, Money sum, Money soFar) {
        public Month {
            lines = List.copyOf(lines);
        }
    }

    private CashFlow(Ownership ownership, Growths growths) {
        this.ownership = ownership;
        this.growths = growths;
        this.months = ownership.terms().termMonths();
        this.present = growths.presentByMonth(ownership.discountRate(), months);
    }

    public static CashFlow of(Ownership ownership) {
        return of(ownership, new Growths());
    }

    /** One of many that go by the same rates. */
    public static CashFlow of(Ownership ownership, Growths growths) {
        CashFlow flow = new CashFlow(ownership, growths);
        flow.purchase();
        flow.holding();
        flow.service();
        flow.use();
        flow.financing();
        flow.sale();
        return flow;
    }

    /** The same with rent that need not be paid, by month from month 1. */
    public CashFlow saving(List<BigDecimal> rentByMonth) {
        CashFlow more = of(ownership, growths);
        for (int month = 1; month <= months; month++) {
            more.add(Flow.RENT_SAVED, month, rentByMonth.get(month - 1));
        }
        return more;
    }

    private void purchase() {
        PurchaseTerms terms = ownership.terms();
        add(Flow.PRICE, 0, terms.price().major().negate());
        add(Flow.TAX, 0, terms.tax().of(terms.price()).major().negate());
        terms.extras()
                .forEach(extra -> add(Flow.EXTRAS, 0, extra.amount().major().negate()));
    }

    private void holding() {
        PurchaseTerms.Holding holding = ownership.terms().holding();
        BigDecimal insurance = ownership
                .terms()
                .insuredValue()
                .major()
                .multiply(holding.insurancePerYear().fraction());
        everyMonth(Flow.INSURANCE, insurance.negate());
        everyMonth(Flow.STORAGE, holding.storagePerYear().major().negate());
    }

    private void service() {
        ownership.terms().service().ifPresent(service -> {
            for (int month = service.everyMonths(); month < months; month += service.everyMonths()) {
                add(Flow.SERVICE, month, service.cost().major().negate());
            }
        });
        ownership.running().service().ifPresent(service -> {
            for (int month = 1; month < months; month++) {
                long due = servicesUntil(month, service) - servicesUntil(month - 1, service);
                add(Flow.SERVICE_BY_DAYS, month, service.cost().times(-due).major());
            }
        });
    }

    private long servicesUntil(int month, Ownership.ServiceByDays service) {
        return ownership
                .daysOutPerYear()
                .multiply(BigDecimal.valueOf(month))
                .divide(TWELVE.multiply(BigDecimal.valueOf(service.everyDaysOut())), 0, RoundingMode.FLOOR)
                .longValueExact();
    }

    private void use() {
        Ownership.Running running = ownership.running();
        everyMonth(
                Flow.RUNNING,
                running.perDayUsed()
                        .major()
                        .multiply(ownership.daysUsedPerYear())
                        .negate());
        ownership.terms().letting().ifPresent(letting -> {
            everyMonth(
                    Flow.LETTING,
                    letting.daysPerYear()
                            .multiply(letting.dayRate().major())
                            .multiply(letting.ownerShare().fraction()));
            everyMonth(
                    Flow.WEAR,
                    running.wearPerDayLet()
                            .major()
                            .multiply(letting.daysPerYear())
                            .negate());
        });
    }

    private void financing() {
        ownership.loan().ifPresent(loan -> {
            LevelLoan level = new LevelLoan(loan);
            add(Flow.LOAN_PAID_OUT, 0, loan.amount().major());
            for (int month = 1; month <= Math.min(months, loan.months()); month++) {
                add(
                        Flow.LOAN_PAYMENTS,
                        month,
                        level.payments().get(month - 1).total().major().negate());
            }
            add(Flow.LOAN_SETTLED, months, level.leftAfter(months).major().negate());
        });
    }

    private void sale() {
        PurchaseTerms.Resale resale = ownership.terms().resale();
        BigDecimal value = new ResaleCurve(ownership.terms().price(), resale.value(), growths).valueAt(months);
        add(Flow.RESALE, months, value);
        add(
                Flow.SELLING_COST,
                months,
                value.multiply(resale.sellingCost().fraction(), Growth.EXACT_ENOUGH)
                        .negate());
    }

    private void everyMonth(Flow flow, BigDecimal aYear) {
        BigDecimal aMonth = Growth.twelfth(aYear);
        for (int month = 1; month <= months; month++) {
            add(flow, month, aMonth);
        }
    }

    private void add(Flow flow, int month, BigDecimal amount) {
        if (amount.signum() != 0) {
            BigDecimal[] row = flows.computeIfAbsent(flow, name -> noughts());
            row[month] = row[month].add(amount);
        }
    }

    private BigDecimal[] noughts() {
        BigDecimal[] row = new BigDecimal[months + 1];
        Arrays.fill(row, BigDecimal.ZERO);
        return row;
    }

    private Currency currency() {
        return ownership.terms().price().currency();
    }

    /** What all of it costs at present value; below zero where it earns more. Rounded once, half up. */
    public Money presentCost() {
        return NetCost.rounded(currency(), presentCostExactly());
    }

    /** Unrounded, in major units. */
    public BigDecimal presentCostExactly() {
        BigDecimal cost = BigDecimal.ZERO;
        for (Flow flow : flows.keySet()) {
            cost = cost.subtract(presentExactly(flow));
        }
        return cost;
    }

    /** What one kind of flow comes to at present value, unrounded. */
    public BigDecimal presentExactly(Flow flow) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal[] row = flows.getOrDefault(flow, noughts());
        for (int month = 0; month <= months; month++) {
            if (row[month].signum() != 0) {
                sum = sum.add(row[month].multiply(present[month]));
            }
        }
        return sum;
    }

    /** Each kind's present value, rounded; they miss the present cost by {@link #presentRounding}. */
    public List<Line> presentByFlow() {
        return flows.keySet().stream()
                .map(flow -> new Line(flow, NetCost.rounded(currency(), presentExactly(flow))))
                .toList();
    }

    /** What has to be added to the lines of {@link #presentByFlow} for them to come to the present cost, with its sign. */
    public Money presentRounding() {
        return presentByFlow().stream()
                .map(Line::amount)
                .reduce(presentCost(), Money::plus)
                .times(-1);
    }

    /**
     * The even yearly sum, paid at each year's end, that is worth the present cost. Rounded once.
     */
    public Money equivalentAnnualCost() {
        return NetCost.rounded(currency(), aYear(presentCostExactly()));
    }

    /** The equivalent annual cost by each day of own use; empty where there is none. */
    public Optional<Money> costPerDayUsed() {
        BigDecimal days = ownership.daysUsedPerYear();
        return days.signum() == 0
                ? Optional.empty()
                : Optional.of(
                        NetCost.rounded(currency(), aYear(presentCostExactly()).divide(days, Growth.EXACT_ENOUGH)));
    }

    private BigDecimal aYear(BigDecimal cost) {
        return cost.divide(yearsWorth(), Growth.EXACT_ENOUGH);
    }

    /** What one unit at each year's end over the term is worth at the purchase. */
    public BigDecimal yearsWorth() {
        BigDecimal rate = ownership.discountRate().fraction();
        return rate.signum() == 0
                ? BigDecimal.valueOf(months).divide(TWELVE, Growth.EXACT_ENOUGH)
                : BigDecimal.ONE.subtract(present[months]).divide(rate, Growth.EXACT_ENOUGH);
    }

    /** What one unit of a month is worth at the purchase. */
    public BigDecimal worth(int month) {
        return present[month];
    }

    /** The sum of each month, unrounded. */
    public List<BigDecimal> sums() {
        List<BigDecimal> sums = new ArrayList<>();
        for (int month = 0; month <= months; month++) {
            BigDecimal sum = BigDecimal.ZERO;
            for (BigDecimal[] row : flows.values()) {
                sum = sum.add(row[month]);
            }
            sums.add(sum);
        }
        return sums;
    }

    /**
     * The first month from which on all that came in makes up for all that went out; empty where it does not even with
     * the sale. Not discounted.
     */
    public Optional<Integer> paybackMonth() {
        BigDecimal soFar = BigDecimal.ZERO;
        Optional<Integer> since = Optional.empty();
        List<BigDecimal> sums = sums();
        for (int month = 0; month <= months; month++) {
            soFar = soFar.add(sums.get(month));
            since = soFar.signum() < 0 ? Optional.empty() : Optional.of(since.orElse(month));
        }
        return since;
    }

    /** The lines of some months, each kind's added up. */
    public static List<Line> together(List<Month> months) {
        Map<Flow, Money> sums = new EnumMap<>(Flow.class);
        months.forEach(month -> month.lines().forEach(line -> sums.merge(line.flow(), line.amount(), Money::plus)));
        return sums.entrySet().stream()
                .map(entry -> new Line(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** Month by month. A line is what its kind's rounded sum has grown by, so that lines add up exactly. */
    public List<Month> months() {
        Map<Flow, BigDecimal> exact = new EnumMap<>(Flow.class);
        Map<Flow, Money> told = new EnumMap<>(Flow.class);
        List<Month> all = new ArrayList<>();
        Money soFar = Money.zero(currency());
        for (int month = 0; month <= months; month++) {
            List<Line> lines = new ArrayList<>();
            Money sum = Money.zero(currency());
            for (Map.Entry<Flow, BigDecimal[]> entry : flows.entrySet()) {
                Flow flow = entry.getKey();
                Money before = told.getOrDefault(flow, Money.zero(currency()));
                BigDecimal running = exact.getOrDefault(flow, BigDecimal.ZERO).add(entry.getValue()[month]);
                Money after = NetCost.rounded(currency(), running);
                exact.put(flow, running);
                told.put(flow, after);
                Money amount = after.minus(before);
                if (amount.signum() != 0) {
                    lines.add(new Line(flow, amount));
                    sum = sum.plus(amount);
                }
            }
            soFar = soFar.plus(sum);
            all.add(new Month(month, lines, sum, soFar));
        }
        return all;
    }
}
