package dayglass.cost.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.cost.rental.RentalTerms;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is left out is outdone by another in every way, and what a plan costs does not change by it. */
class DominanceTest {
    private static final Schedule WEEK = Questions.shooting(7);
    private static final String OTHER = "75 mm";

    /** One offer among several: what it covers, how many there are, what a day and a week cost, and when it is there. */
    private record Offer(Map<String, Integer> covers, int copies, String day, String week, List<DateRange> when) {
        static Offer of(int copies, String day, String week) {
            return new Offer(Map.of(Questions.SLOT, 1), copies, day, week, List.of());
        }

        Offer covering(Map<String, Integer> covers) {
            return new Offer(covers, copies, day, week, when);
        }

        Offer until(int days) {
            return new Offer(
                    covers,
                    copies,
                    day,
                    week,
                    List.of(new DateRange(WEEK.dateOf(0), WEEK.dateOf(0).plusDays(days))));
        }

        Question.Rental rental(int place) {
            RentalTerms terms =
                    Questions.terms(List.of(Questions.block(1, day), Questions.block(7, week)), Optional.empty(), "0");
            return new Question.Rental("offer-" + place, "A house", covers, copies, terms, when, Map.of());
        }
    }

    private record Case(String what, List<Offer> offers, List<Integer> kept) {
        @Override
        public String toString() {
            return what;
        }
    }

    /** Two of the 40 mm and one of the 75 mm are needed each day. */
    static List<Case> cases() {
        Map<String, Integer> both = Map.of(Questions.SLOT, 1, OTHER, 1);
        Map<String, Integer> pair = Map.of(Questions.SLOT, 2);
        return List.of(
                new Case(
                        "dearer by the day and the week",
                        List.of(Offer.of(2, "11", "44"), Offer.of(2, "10", "40")),
                        List.of(1)),
                new Case(
                        "dearer by the week alone",
                        List.of(Offer.of(2, "10", "44"), Offer.of(2, "10", "40")),
                        List.of(1)),
                new Case(
                        "cheaper by the day, dearer by the week",
                        List.of(Offer.of(2, "9", "44"), Offer.of(2, "10", "40")),
                        List.of(0, 1)),
                new Case("alike", List.of(Offer.of(2, "10", "40"), Offer.of(2, "10", "40")), List.of(0)),
                new Case(
                        "of the cheaper there is one and two are needed",
                        List.of(Offer.of(2, "11", "44"), Offer.of(1, "10", "40")),
                        List.of(0, 1)),
                new Case(
                        "the cheaper is there for six days of seven",
                        List.of(Offer.of(2, "11", "44"), Offer.of(2, "10", "40").until(6)),
                        List.of(0, 1)),
                new Case(
                        "the dearer is there for six days of seven",
                        List.of(Offer.of(2, "11", "44").until(6), Offer.of(2, "10", "40")),
                        List.of(1)),
                new Case(
                        "the cheaper serves more",
                        List.of(Offer.of(2, "11", "44"), Offer.of(2, "10", "40").covering(both)),
                        List.of(1)),
                new Case(
                        "the cheaper serves less",
                        List.of(Offer.of(2, "11", "44").covering(both), Offer.of(2, "10", "40")),
                        List.of(0, 1)),
                new Case(
                        "a pair for more than one",
                        List.of(Offer.of(2, "11", "44").covering(pair), Offer.of(2, "10", "40")),
                        List.of(0, 1)),
                new Case(
                        "a pair for less than one",
                        List.of(Offer.of(2, "11", "44"), Offer.of(2, "10", "40").covering(pair)),
                        List.of(1)),
                new Case(
                        "outdone by what is outdone itself",
                        List.of(Offer.of(2, "12", "48"), Offer.of(2, "11", "44"), Offer.of(2, "10", "40")),
                        List.of(2)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void whatAnotherOutdoesIsLeftOut(Case each) {
        List<Question.Rental> rentals = new ArrayList<>();
        // Both slots belong to one problem through an offer that nothing outdoes and of which there are too few to
        // outdo.
        rentals.add(new Offer(Map.of(Questions.SLOT, 1, OTHER, 1), 1, "0", "1000", List.of()).rental(9));
        for (Offer offer : each.offers()) {
            rentals.add(offer.rental(rentals.size() - 1));
        }
        Question question = Variations.withNeeds(
                Questions.question(WEEK, Questions.everyDay(), rentals, List.of()),
                List.of(
                        new Question.Need(Questions.SLOT, 2, Set.of(DayUse.SHOOT), List.of()),
                        new Question.Need(OTHER, 1, Set.of(DayUse.SHOOT), List.of())));
        Parts parts = new Parts(Resolved.of(question));
        Parts.Part part = parts.parts.get(0);
        Cover cover = new CoverBuilder(parts, part).cover(StopSignal.NEVER).orElseThrow();
        int[] kept = Dominance.kept(cover, parts.plenty(part));
        assertEquals(
                each.kept(),
                Arrays.stream(kept).skip(1).map(place -> place - 1).boxed().toList());
    }

    /** Small random questions with one more offer, an echo of the first, dearer or there for less time; each tried out whole. */
    @Test
    void thePlanCostsWhatTryingEverythingFinds() {
        int planned = 0;
        int fewer = 0;
        for (long seed = 5_000; seed < 5_600; seed++) {
            Question small = RandomQuestions.small(seed);
            if (small.rentals().isEmpty()) {
                continue;
            }
            Question question = echoed(small, seed);
            Optional<Money> expected = ExhaustiveSearch.of(question).best();
            Optional<Money> found =
                    LeastCost.best(question, Questions.patience()).map(LeastCost.Best::total);
            assertEquals(expected, found, question.job());
            planned += found.isPresent() ? 1 : 0;
            fewer += leavesOut(question) ? 1 : 0;
        }
        assertTrue(planned > 200, "too few questions with a plan to say much: " + planned);
        assertTrue(fewer > 50, "too few questions from which something is left out: " + fewer);
    }

    private static Question echoed(Question small, long seed) {
        Question.Rental first = small.rentals().get(0);
        RentalTerms terms = first.terms();
        Money more = Money.ofMinor(small.currency(), seed % 3);
        RentalTerms dearer = new RentalTerms(
                terms.blocks(),
                terms.extraDay(),
                terms.dayFactors(),
                terms.longHire(),
                terms.minimumCharge(),
                terms.perTrip().plus(more),
                terms.addOns());
        List<DateRange> when = seed % 2 == 0
                ? first.available()
                : List.of(new DateRange(
                        small.schedule().dateOf(0), small.schedule().dateOf(1)));
        List<Question.Rental> rentals = new ArrayList<>(small.rentals());
        rentals.add(new Question.Rental("echo", first.supplier(), first.covers(), 1, dearer, when, first.draws()));
        return Variations.withOptions(small, rentals, small.purchases(), small.owned());
    }

    private static boolean leavesOut(Question question) {
        Resolved resolved = Resolved.of(question);
        if (!resolved.coverable()) {
            return false;
        }
        Parts parts = new Parts(resolved);
        return parts.parts.stream().anyMatch(part -> {
            Cover cover = new CoverBuilder(parts, part).cover(StopSignal.NEVER).orElseThrow();
            return Dominance.kept(cover, parts.plenty(part)).length < cover.hires.length;
        });
    }
}
