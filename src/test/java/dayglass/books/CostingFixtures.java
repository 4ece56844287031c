package dayglass.books;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Choice;
import dayglass.cost.plan.Explanation;
import dayglass.cost.plan.Question;
import dayglass.cost.rental.RentalCharge;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Costings put together by hand, with figures that were added up on paper. */
public final class CostingFixtures {
    public static final CostingReference REFERENCE =
            new CostingReference("41", Instant.parse("2027-03-01T09:30:00Z"), "ab".repeat(32), "cd".repeat(32));
    public static final LocalDate FIRST_DAY = LocalDate.of(2027, 4, 5);

    private CostingFixtures() {}

    /** A question with an answer to it. */
    public record Costed(Question question, Answer answer) {
        public CostingLines lines(Map<String, String> codes) {
            return CostingLines.of(REFERENCE, question, answer, new CostCodes(codes));
        }
    }

    /**
     * Two rental periods, a purchase with an extra and tax, and an owned unit. Payable: 800.00 + 9020.00 + 228.66 =
     * 10048.66; weighed: 800.00 + 3100.00 + 228.66 + 0.00 = 4128.66.
     */
    public static Costed mixed() {
        Currency euro = Currency.of("EUR");
        LocalDate tenth = FIRST_DAY.plusDays(5);
        Choice.Rent laterPair = new Choice.Rent(
                "tarn-pair",
                "Tarn & Daughters",
                DateRange.inclusive(tenth, tenth.plusDays(1)),
                new RentalCharge(
                        List.of(
                                new RentalCharge.BlockUsed(tenth, 1, Money.of("EUR", "102.86"), true),
                                new RentalCharge.BlockUsed(tenth.plusDays(1), 1, Money.of("EUR", "102.86"), true)),
                        Money.of("EUR", "205.72"),
                        Money.of("EUR", "20.57"),
                        Money.of("EUR", "14.85"),
                        Money.of("EUR", "10.00"),
                        List.of(new RentalCharge.AddOnCharge("stamp", Money.of("EUR", "18.66"))),
                        Money.of("EUR", "228.66")));
        Choice.Buy purchase = new Choice.Buy(
                "buy-40",
                "Fell Optical",
                FIRST_DAY.plusDays(2),
                Money.of("EUR", "9020.00"),
                Money.of("EUR", "3100.00"),
                false);
        Choice.Rent set = rent(
                "fell-set",
                "Fell Optical",
                FIRST_DAY,
                7,
                "720.00",
                List.of(
                        new RentalCharge.AddOnCharge("damage waiver", Money.of("EUR", "72.00")),
                        new RentalCharge.AddOnCharge("sales tax", Money.of("EUR", "8.00"))),
                euro);
        Choice.Own own = new Choice.Own("unit-3", Money.zero(euro));
        Question question = question(
                euro,
                List.of("40 mm", "100 mm"),
                List.of(purchaseOf("buy-40", "8000.00", "8.875", List.of(extra("case", "310.00")), euro)),
                List.of("unit-3"));
        return new Costed(
                question,
                answer(
                        euro,
                        List.of(laterPair, purchase, set, own),
                        List.of(
                                new Answer.Coverage(FIRST_DAY, "100 mm", List.of("fell-set")),
                                new Answer.Coverage(FIRST_DAY, "40 mm", List.of("fell-set", "unit-3")),
                                new Answer.Coverage(FIRST_DAY.plusDays(2), "40 mm", List.of("buy-40")),
                                new Answer.Coverage(tenth, "100 mm", List.of("tarn-pair")))));
    }

    /** One rental period of {@code days} days for one block, with one add-on where its name is not empty. */
    public static Costed oneRental(String currency, String price, String addOn, String addOnAmount, String supplier) {
        Currency one = Currency.of(currency);
        List<RentalCharge.AddOnCharge> addOns = addOn.isEmpty()
                ? List.of()
                : List.of(new RentalCharge.AddOnCharge(addOn, Money.of(currency, addOnAmount)));
        Choice.Rent rent = rent("pair", supplier, FIRST_DAY, 3, price, addOns, one);
        return new Costed(
                question(one, List.of("40 mm"), List.of(), List.of()),
                answer(one, List.of(rent), List.of(new Answer.Coverage(FIRST_DAY, "40 mm", List.of("pair")))));
    }

    /** Nothing but an owned unit. */
    public static Costed ownedOnly() {
        Currency euro = Currency.of("EUR");
        return new Costed(
                question(euro, List.of("40 mm"), List.of(), List.of("unit-3")),
                answer(
                        euro,
                        List.of(new Choice.Own("unit-3", Money.zero(euro))),
                        List.of(new Answer.Coverage(FIRST_DAY, "40 mm", List.of("unit-3")))));
    }

    public static Choice.Rent rent(
            String option,
            String supplier,
            LocalDate from,
            int days,
            String price,
            List<RentalCharge.AddOnCharge> addOns,
            Currency currency) {
        Money hire = Money.of(currency.code(), price);
        Money nothing = Money.zero(currency);
        Money total = addOns.stream().map(RentalCharge.AddOnCharge::amount).reduce(hire, Money::plus);
        return new Choice.Rent(
                option,
                supplier,
                new DateRange(from, from.plusDays(days)),
                new RentalCharge(
                        List.of(new RentalCharge.BlockUsed(from, days, hire, false)),
                        hire,
                        nothing,
                        nothing,
                        nothing,
                        addOns,
                        total));
    }

    public static Question.Purchase purchaseOf(
            String id, String price, String tax, List<PurchaseTerms.Extra> extras, Currency currency) {
        return new Question.Purchase(
                id,
                "Fell Optical",
                Map.of("40 mm", 1),
                1,
                new PurchaseTerms(
                        Money.of(currency.code(), price),
                        Percent.of(tax),
                        extras,
                        36,
                        new PurchaseTerms.Resale(new PurchaseTerms.YearlyLoss(Percent.of("9")), Percent.of("8")),
                        new PurchaseTerms.Holding(Percent.ZERO, Money.zero(currency)),
                        Optional.empty(),
                        Optional.empty()),
                FIRST_DAY.plusDays(2));
    }

    public static PurchaseTerms.Extra extra(String name, String amount) {
        return new PurchaseTerms.Extra(name, Money.of("EUR", amount));
    }

    public static Question question(
            Currency currency, List<String> slots, List<Question.Purchase> purchases, List<String> owned) {
        return new Question(
                "Salt Ferry",
                currency,
                new Percent(BigDecimal.ZERO),
                Optional.empty(),
                new Schedule(List.of(new Schedule.Span(new DateRange(FIRST_DAY, FIRST_DAY.plusDays(7)), DayUse.SHOOT))),
                slots.stream()
                        .map(slot -> new Question.Need(slot, 1, Set.of(DayUse.SHOOT), List.of()))
                        .toList(),
                List.of(),
                purchases,
                owned.stream()
                        .map(id -> new Question.Owned(id, Map.of("40 mm", 1), List.of()))
                        .toList(),
                Map.of());
    }

    /** An answer whose total and payments are those of its choices. */
    public static Answer answer(Currency currency, List<Choice> choices, List<Answer.Coverage> coverage) {
        Money total = choices.stream().map(Choice::total).reduce(Money.zero(currency), Money::plus);
        List<Answer.Cash> cash = new ArrayList<>(choices.stream()
                .flatMap(choice -> {
                    if (choice instanceof Choice.Rent rent) {
                        return Stream.of(new Answer.Cash(rent.dates().from(), rent.total(), rent.option()));
                    }
                    if (choice instanceof Choice.Buy buy) {
                        return Stream.of(new Answer.Cash(buy.from(), buy.outlay(), buy.option()));
                    }
                    return Stream.of();
                })
                .toList());
        cash.sort(Comparator.comparing(Answer.Cash::date));
        Answer.Row none = new Answer.Row(Optional.empty(), Optional.empty());
        Answer.Row best = new Answer.Row(Optional.of(total), Optional.of(total));
        return new Answer(
                total,
                total,
                true,
                new Answer.Comparison(none, none, none, none, none, best),
                choices,
                coverage,
                cash,
                new Explanation(List.of(), List.of(), Money.zero(currency)));
    }
}
