package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Money;
import dayglass.base.Shares;
import dayglass.cost.ownership.PlainNetCost;
import dayglass.cost.rental.PlainPricing;
import dayglass.cost.rental.PlainPricing.Laid;
import dayglass.cost.rental.PlainPricing.Price;
import dayglass.cost.rental.PlainPricing.Rates;
import dayglass.cost.rental.RentalCharge;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Holds one answer against its question: every period priced again, every limit counted again, every sum drawn again.
 * It says whether the plan may be carried out and costs what it claims, not whether it is the cheapest.
 */
public final class PlanAudit {
    private final Question question;
    private final Answer answer;
    private final PlainNeeds needs;
    private final Map<String, Question.Rental> rentals;
    private final Map<String, Question.Purchase> purchases;
    private final Map<String, Question.Owned> owned;

    private PlanAudit(Question question, Answer answer) {
        this.question = question;
        this.answer = answer;
        this.needs = new PlainNeeds(question);
        this.rentals = byId(question.rentals(), Question.Rental::id);
        this.purchases = byId(question.purchases(), Question.Purchase::id);
        this.owned = byId(question.owned(), Question.Owned::id);
    }

    /** Throws an assertion error that names the job and the first thing found wrong. */
    public static void check(Question question, Answer answer) {
        new PlanAudit(question, answer).check();
    }

    private void check() {
        checkEachChoice();
        checkTotals();
        for (int day = 0; day < question.schedule().days(); day++) {
            checkHeld(day);
            checkCovered(day);
        }
        checkPurchases();
        checkCoverageList();
        checkCash();
        checkComparison();
        checkExplanation();
    }

    // --- choices

    private void checkEachChoice() {
        Set<String> units = new HashSet<>();
        for (Choice choice : answer.choices()) {
            if (choice instanceof Choice.Rent rent) {
                checkRent(rent);
            } else if (choice instanceof Choice.Buy buy) {
                checkBuy(buy);
            } else {
                assertTrue(owned.containsKey(choice.option()), about(choice, "is owned"));
                assertTrue(units.add(choice.option()), about(choice, "is listed once"));
                assertEquals(zero(), choice.total(), about(choice, "costs nothing"));
                assertTrue(serves(choice.option()), about(choice, "serves a slot"));
            }
        }
    }

    private void checkRent(Choice.Rent rent) {
        assertTrue(rentals.containsKey(rent.option()), about(rent, "is offered for rent"));
        Question.Rental rental = known(rentals, rent.option());
        assertEquals(rental.supplier(), rent.supplier(), about(rent, "names its supplier"));
        int first = question.schedule().dayOf(rent.dates().from());
        int last = question.schedule().dayOf(rent.dates().lastDay());
        assertTrue(first >= 0 && last < question.schedule().days(), about(rent, "lies inside the horizon"));
        assertTrue(
                PlainNeeds.insideOneWindow(
                        rental.available(), rent.dates().from(), rent.dates().lastDay()),
                about(rent, "lies inside one window"));
        PlainPricing pricing =
                new PlainPricing(rental.terms(), question.schedule(), question.currency(), Rates.EVERY_BLOCK);
        Optional<Price> price = pricing.price(first, last);
        assertTrue(price.isPresent(), about(rent, "can be charged"));
        checkCharge(rent, price.get());
        checkBlocks(rent, pricing, first, last);
    }

    private void checkCharge(Choice.Rent rent, Price price) {
        RentalCharge charge = rent.charge();
        assertSame(price.hire(), charge.hire(), about(rent, "hire"));
        assertSame(price.discount(), charge.discount(), about(rent, "discount"));
        assertSame(price.raisedToMinimum(), charge.raisedToMinimum(), about(rent, "raised to the minimum"));
        assertSame(price.trip(), charge.trip(), about(rent, "trip"));
        assertEquals(
                List.copyOf(price.addOns().keySet()),
                charge.addOns().stream().map(RentalCharge.AddOnCharge::name).toList(),
                about(rent, "add-ons in their order"));
        Money sum = charge.hire()
                .minus(charge.discount())
                .plus(charge.raisedToMinimum())
                .plus(charge.trip());
        for (RentalCharge.AddOnCharge addOn : charge.addOns()) {
            assertSame(known(price.addOns(), addOn.name()), addOn.amount(), about(rent, addOn.name()));
            sum = sum.plus(addOn.amount());
        }
        assertSame(price.total(), charge.total(), about(rent, "total"));
        assertEquals(sum, charge.total(), about(rent, "lines add up to the total"));
    }

    private void checkBlocks(Choice.Rent rent, PlainPricing pricing, int first, int last) {
        int day = first;
        Money sum = zero();
        for (RentalCharge.BlockUsed block : rent.charge().blocks()) {
            assertTrue(day <= last, about(rent, "no block begins after the period"));
            assertEquals(question.schedule().dateOf(day), block.from(), about(rent, "blocks lie end to end"));
            Laid laid = new Laid(day, block.days(), block.price().major(), block.extraDay());
            assertTrue(pricing.blocksOn(day, first).contains(laid), about(rent, "offers " + block));
            sum = sum.plus(block.price());
            day += block.days();
        }
        assertTrue(day > last, about(rent, "blocks cover the period"));
        assertEquals(rent.charge().hire(), sum, about(rent, "blocks add up to the hire"));
    }

    private void checkBuy(Choice.Buy buy) {
        assertTrue(purchases.containsKey(buy.option()), about(buy, "is offered for sale"));
        Question.Purchase purchase = known(purchases, buy.option());
        assertEquals(purchase.supplier(), buy.supplier(), about(buy, "names its supplier"));
        assertEquals(purchase.availableFrom(), buy.from(), about(buy, "serves from"));
        assertEquals(PlainNetCost.outlay(purchase.terms()), buy.outlay(), about(buy, "outlay"));
        assertEquals(PlainNetCost.of(purchase.terms(), question.discountRate()), buy.netCost(), about(buy, "net cost"));
        if (buy.spare()) {
            assertTrue(buy.netCost().signum() <= 0, about(buy, "is spare, so it may not cost anything"));
        }
    }

    private void checkTotals() {
        assertEquals(
                answer.choices().stream().map(Choice::total).reduce(zero(), Money::plus),
                answer.total(),
                about("choices add up to the total"));
        assertTrue(answer.lowerBound().compareTo(answer.total()) <= 0, about("the bound is no more than the total"));
        assertEquals(
                answer.lowerBound().equals(answer.total()), answer.optimal(), about("optimal where the two are equal"));
    }

    // --- limits

    private void checkHeld(int day) {
        LocalDate date = question.schedule().dateOf(day);
        Map<String, Integer> drawn = new HashMap<>();
        for (Question.Rental rental : question.rentals()) {
            int held = held(rental.id(), date);
            assertTrue(held <= rental.copies(), about(rental.id() + " held " + held + " times on " + date));
            rental.draws().forEach((thing, count) -> drawn.merge(thing, count * held, Integer::sum));
        }
        drawn.forEach((thing, count) -> assertTrue(
                count <= question.stock().getOrDefault(thing, 0), about(thing + " drawn " + count + " on " + date)));
    }

    private void checkCovered(int day) {
        LocalDate date = question.schedule().dateOf(day);
        for (String slot : needs.slots()) {
            int serving = 0;
            for (Choice choice : answer.choices()) {
                serving += holds(choice, date) ? covers(choice.option()).getOrDefault(slot, 0) : 0;
            }
            assertTrue(needs.count(slot, day) <= serving, about(slot + " is covered on " + date));
        }
    }

    private void checkPurchases() {
        Money outlays = zero();
        for (Question.Purchase purchase : question.purchases()) {
            List<Choice.Buy> bought = answer.choices().stream()
                    .filter(choice -> choice.option().equals(purchase.id()))
                    .map(Choice.Buy.class::cast)
                    .toList();
            assertTrue(bought.size() <= purchase.copies(), about(purchase.id() + " bought " + bought.size()));
            outlays = bought.stream().map(Choice.Buy::outlay).reduce(outlays, Money::plus);
            long spare = bought.stream().filter(Choice.Buy::spare).count();
            int serving = answer.coverage().stream()
                    .mapToInt(coverage -> Collections.frequency(coverage.by(), purchase.id()))
                    .max()
                    .orElse(0);
            assertTrue(
                    bought.size() - spare <= serving || (serving > 0 && spare == 0),
                    about(purchase.id() + " is spare"));
            assertTrue(serving <= bought.size() - spare, about(purchase.id() + " serves, so is not spare"));
        }
        Money paid = outlays;
        question.cashLimit()
                .ifPresent(limit -> assertTrue(paid.compareTo(limit) <= 0, about("outlays within the cash limit")));
    }

    // --- lists

    private void checkCoverageList() {
        List<String> listed = new ArrayList<>();
        for (Answer.Coverage coverage : answer.coverage()) {
            listed.add(coverage.date() + " " + coverage.slot());
            int count = needs.count(coverage.slot(), question.schedule().dayOf(coverage.date()));
            int serving = 0;
            for (String option : coverage.by()) {
                serving += covers(option).getOrDefault(coverage.slot(), 0);
            }
            assertTrue(count <= serving, about(coverage + " is enough for " + count));
            for (String option : new HashSet<>(coverage.by())) {
                assertTrue(
                        Collections.frequency(coverage.by(), option) <= held(option, coverage.date()),
                        about(coverage + " names what is held"));
            }
        }
        List<String> expected = new ArrayList<>();
        for (int day = 0; day < question.schedule().days(); day++) {
            for (String slot : needs.slots()) {
                if (needs.count(slot, day) > 0) {
                    expected.add(question.schedule().dateOf(day) + " " + slot);
                }
            }
        }
        assertEquals(expected, listed, about("coverage lists each need once, by date, then slot"));
    }

    private void checkCash() {
        List<String> expected = new ArrayList<>();
        for (Choice choice : answer.choices()) {
            if (choice instanceof Choice.Rent rent) {
                expected.add(rent.dates().from() + " " + rent.total() + " " + rent.option());
            } else if (choice instanceof Choice.Buy buy) {
                expected.add(buy.from() + " " + buy.outlay() + " " + buy.option());
            }
        }
        List<String> listed = answer.cash().stream()
                .map(cash -> cash.date() + " " + cash.amount() + " " + cash.option())
                .toList();
        assertEquals(
                expected.stream().sorted().toList(), listed.stream().sorted().toList(), about("cash by choice"));
        List<LocalDate> dates = answer.cash().stream().map(Answer.Cash::date).toList();
        assertEquals(dates.stream().sorted().toList(), dates, about("cash by date"));
    }

    private void checkComparison() {
        Answer.Comparison rows = answer.comparison();
        assertEquals(Optional.of(answer.total()), rows.best().total(), about("best is the total"));
        assertEquals(Optional.of(answer.lowerBound()), rows.best().bound(), about("best has the plan's bound"));
        for (Answer.Row row :
                List.of(rows.ownedOnly(), rows.dayRateOnly(), rows.weekRateOnly(), rows.rentOnly(), rows.buyOnly())) {
            if (row.total().isPresent()) {
                assertTrue(
                        answer.lowerBound().compareTo(row.total().get()) <= 0, about("no row beats the bound: " + row));
                assertTrue(row.bound().isPresent(), about("a row with a total has a bound"));
                assertTrue(row.bound().get().compareTo(row.total().get()) <= 0, about("a row's bound: " + row));
            }
        }
        rows.ownedOnly().total().ifPresent(total -> assertEquals(zero(), total, about("owned units cost nothing")));
    }

    // --- the explanation

    private void checkExplanation() {
        Explanation explanation = answer.explanation();
        assertEquals(answer.choices().size(), explanation.reasons().size(), about("one reason a choice"));
        Money sum = explanation.unshared();
        Map<String, BigInteger> listed = new LinkedHashMap<>();
        for (Explanation.SlotDay slotDay : explanation.slotDays()) {
            sum = sum.plus(slotDay.amount());
            listed.merge(slotDay.date() + " " + slotDay.slot(), slotDay.amount().minor(), BigInteger::add);
        }
        assertEquals(answer.total(), sum, about("slot-days and what is unshared add up to the total"));
        if (attributable()) {
            checkShares(listed);
        }
        for (int index = 0; index < answer.choices().size(); index++) {
            checkReason(answer.choices().get(index), explanation.reasons().get(index));
        }
    }

    /** True where the coverage says by itself which choice serves: all held copies of an option serve, or there is one. */
    private boolean attributable() {
        return answer.coverage().stream()
                .allMatch(coverage -> coverage.by().stream()
                        .allMatch(option -> chosen(option).size() == 1
                                || Collections.frequency(coverage.by(), option) == held(option, coverage.date())));
    }

    private void checkShares(Map<String, BigInteger> listed) {
        Map<String, BigInteger> expected = new LinkedHashMap<>();
        BigInteger unshared = BigInteger.ZERO;
        for (Choice choice : answer.choices()) {
            List<String> served = answer.coverage().stream()
                    .filter(coverage -> coverage.by().contains(choice.option()) && holds(choice, coverage.date()))
                    .map(coverage -> coverage.date() + " " + coverage.slot())
                    .toList();
            if (served.isEmpty()) {
                unshared = unshared.add(choice.total().minor());
                continue;
            }
            List<BigInteger> shares = Shares.evenly(choice.total().minor(), served.size());
            for (int index = 0; index < served.size(); index++) {
                expected.merge(served.get(index), shares.get(index), BigInteger::add);
            }
        }
        expected.values().removeIf(amount -> amount.signum() == 0);
        listed.values().removeIf(amount -> amount.signum() == 0);
        assertEquals(expected, listed, about("even shares of what serves"));
        assertEquals(unshared, answer.explanation().unshared().minor(), about("what serves nothing is unshared"));
    }

    private void checkReason(Choice choice, Explanation.Reason reason) {
        reason.without()
                .flatMap(Explanation.Without::total)
                .ifPresent(total -> assertTrue(
                        answer.lowerBound().compareTo(total) <= 0, about(choice, "forbidden cannot beat the bound")));
        if (choice instanceof Choice.Rent rent) {
            for (Explanation.Rival rival : reason.rivals()) {
                assertTrue(rent.charge().hire().compareTo(rival.hire()) <= 0, about(choice, "is beaten by " + rival));
            }
            List<Money> hires =
                    reason.rivals().stream().map(Explanation.Rival::hire).toList();
            assertEquals(hires.stream().sorted().toList(), hires, about(choice, "rivals, dearest last"));
        } else {
            assertTrue(reason.rivals().isEmpty(), about(choice, "has no rival blocks"));
        }
    }

    // --- words and look-ups

    private List<Choice> chosen(String option) {
        return answer.choices().stream()
                .filter(choice -> choice.option().equals(option))
                .toList();
    }

    private int held(String option, LocalDate date) {
        return (int)
                chosen(option).stream().filter(choice -> holds(choice, date)).count();
    }

    private boolean holds(Choice choice, LocalDate date) {
        if (choice instanceof Choice.Rent rent) {
            return rent.dates().contains(date);
        }
        if (choice instanceof Choice.Buy buy) {
            return !date.isBefore(buy.from());
        }
        return PlainNeeds.open(known(owned, choice.option()).available(), date);
    }

    private boolean serves(String option) {
        return answer.coverage().stream().anyMatch(coverage -> coverage.by().contains(option));
    }

    private Map<String, Integer> covers(String option) {
        if (rentals.containsKey(option)) {
            return known(rentals, option).covers();
        }
        return purchases.containsKey(option)
                ? known(purchases, option).covers()
                : known(owned, option).covers();
    }

    private Money zero() {
        return Money.zero(question.currency());
    }

    private String about(String what) {
        return question.job() + ": " + what;
    }

    private String about(Choice choice, String what) {
        return question.job() + ": " + choice + ": " + what;
    }

    private static void assertSame(BigDecimal expected, Money actual, String message) {
        assertEquals(0, expected.compareTo(actual.major()), message + ": expected " + expected + ", was " + actual);
    }

    private static <T> T known(Map<String, T> among, String id) {
        T found = among.get(id);
        if (found == null) {
            throw new AssertionError("no option is called " + id);
        }
        return found;
    }

    private static <T> Map<String, T> byId(List<T> options, Function<T, String> id) {
        return options.stream().collect(Collectors.toMap(id, Function.identity()));
    }
}
