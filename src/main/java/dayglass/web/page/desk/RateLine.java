package dayglass.web.page.desk;

import dayglass.catalogue.Rate;
import dayglass.shelf.LetsNames;
import dayglass.web.page.RateWords;
import dayglass.web.page.picture.Words;
import java.util.stream.Collectors;

/**
 * A rate in a few lines.
 *
 * @param number its place on the card, from 1
 * @param lets what it is for; empty where that is not said
 * @param covers the slots that it serves in a job; empty where it serves none
 */
public record RateLine(int number, String code, String lets, String covers, String blocks, String terms) {
    static RateLine of(int number, Rate rate, LetsNames names) {
        return new RateLine(
                number,
                rate.code(),
                rate.lets().map(names::said).orElse(""),
                rate.covers().isEmpty() ? "" : Words.covers(rate.covers()),
                rate.terms().blocks().stream()
                        .map(block -> RateWords.block(block) + " " + Words.amount(block.price()))
                        .collect(Collectors.joining(", ")),
                RateWords.terms(rate));
    }
}
