package dayglass.web.page.desk;

import dayglass.base.Stored;
import dayglass.catalogue.RateCard;
import dayglass.catalogue.RateCards;
import dayglass.web.page.picture.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cards of one supplier and name as they follow each other, the earliest first.
 *
 * @param now how the card that is looked at stands to today, in words
 */
public record Succession(String now, List<Step> steps) {
    public Succession {
        steps = List.copyOf(steps);
    }

    /**
     * One of the cards.
     *
     * @param until the last day on which it is in force; empty for the last card
     * @param standing {@code in force today}, {@code came before} or {@code follows}
     * @param here whether it is the one that is looked at
     */
    public record Step(long id, String from, String until, String standing, boolean here) {}

    static Succession of(RateCards cards, Stored<RateCard.Id, RateCard> card, LocalDate today) {
        List<Stored<RateCard.Id, RateCard>> all =
                cards.succession(card.facts().supplier(), card.facts().name());
        List<Step> steps = new ArrayList<>();
        for (int at = 0; at < all.size(); at++) {
            Stored<RateCard.Id, RateCard> each = all.get(at);
            LocalDate from = each.facts().effectiveFrom();
            Optional<LocalDate> next =
                    at + 1 < all.size() ? Optional.of(all.get(at + 1).facts().effectiveFrom()) : Optional.empty();
            steps.add(new Step(
                    each.id().number(),
                    Words.day(from),
                    next.map(day -> Words.day(day.minusDays(1))).orElse(""),
                    standing(from, next, today),
                    each.id().equals(card.id())));
        }
        String now = steps.stream()
                .filter(Step::here)
                .map(Step::standing)
                .findFirst()
                .orElse("");
        return new Succession(now, steps);
    }

    private static String standing(LocalDate from, Optional<LocalDate> next, LocalDate today) {
        if (from.isAfter(today)) {
            return "follows";
        }
        return next.filter(day -> !day.isAfter(today)).isPresent() ? "came before" : "in force today";
    }
}
