package dayglass.web.page.verdict;

import dayglass.cost.ownership.CashFlow;
import dayglass.cost.scenario.Verdict;
import dayglass.house.House;
import dayglass.house.Household;
import dayglass.paper.PaperSize;
import dayglass.paper.Pdf;
import dayglass.web.page.Html;
import dayglass.web.page.picture.Words;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A verdict on paper, for a bank or a producer: what was asked, what it comes to, and every month of it. */
public final class VerdictPaper {
    private static final int YEAR = 12;

    private final Household household;
    private final Clock clock;
    private final Html html;

    public VerdictPaper(Household household, Clock clock, Html html) {
        this.household = household;
        this.clock = clock;
        this.html = html;
    }

    /**
     * A year of owning with the rent that it saves.
     *
     * @param lines by what money moves for
     */
    public record Year(String name, String lines, String sum, String soFar) {}

    /** Prints it. */
    public byte[] print(Verdict verdict, PaperSize size) {
        House house = household.settings().now().facts();
        return Pdf.of(
                html.text(
                        "verdictpaper.jte",
                        Map.of(
                                "house", house.name(),
                                "on",
                                        Words.day(clock.instant()
                                                .atZone(house.zone())
                                                .toLocalDate()),
                                "view", VerdictView.of(verdict),
                                "asked", AskedRows.of(verdict.question()),
                                "years", years(verdict.against().months()))),
                size);
    }

    private static List<Year> years(List<CashFlow.Month> months) {
        List<Year> years = new ArrayList<>();
        years.add(year("at first", months.subList(0, 1)));
        for (int from = 1; from < months.size(); from += YEAR) {
            int until = Math.min(months.size(), from + YEAR);
            years.add(year("year " + (from / YEAR + 1), months.subList(from, until)));
        }
        return years;
    }

    private static Year year(String name, List<CashFlow.Month> months) {
        List<CashFlow.Line> lines = CashFlow.together(months);
        return new Year(
                name,
                lines.stream()
                        .map(line -> line.flow().words() + " " + Words.amount(line.amount()))
                        .collect(Collectors.joining("; ")),
                Words.amount(months.stream()
                        .map(CashFlow.Month::sum)
                        .reduce((one, other) -> one.plus(other))
                        .orElseThrow()),
                Words.amount(months.get(months.size() - 1).soFar()));
    }
}
