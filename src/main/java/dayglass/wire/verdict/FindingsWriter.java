package dayglass.wire.verdict;

import dayglass.cost.scenario.Findings;
import dayglass.wire.Json;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What many draws say, as it is answered. */
final class FindingsWriter {
    private static final int DECIMALS_OF_CHANCE = 4;

    private FindingsWriter() {}

    static Json write(Findings found) {
        return Json.object()
                .put("draws", found.draws())
                .put("asked", found.asked())
                .put("seed", found.seed())
                .put("chanceOwningIsCheaper", number(found.chanceOwningIsCheaper()))
                .put("owning", range(found.owning()))
                .put("renting", range(found.renting()))
                .put("saving", range(found.saving()))
                .put("regretOfOwning", found.regretOfOwning().amount())
                .put("regretOfRenting", found.regretOfRenting().amount())
                .put(
                        "tornado",
                        Json.list(found.tornado().stream()
                                .map(FindingsWriter::bar)
                                .toList()))
                .put(
                        "convergence",
                        Json.list(found.convergence().stream()
                                .map(FindingsWriter::step)
                                .toList()))
                .put(
                        "distribution",
                        Json.list(found.distribution().stream()
                                .map(FindingsWriter::bin)
                                .toList()))
                .build();
    }

    private static String number(double value) {
        return new BigDecimal(value)
                .setScale(DECIMALS_OF_CHANCE, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static Json range(Findings.Range range) {
        return Json.object()
                .put("mean", range.mean().amount())
                .put("p10", range.p10().amount())
                .put("p50", range.p50().amount())
                .put("p90", range.p90().amount())
                .build();
    }

    private static Json bar(Findings.Bar bar) {
        return Json.object()
                .put("input", bar.input())
                .put("low", number(bar.low()))
                .put("high", number(bar.high()))
                .put("savingAtLow", bar.savingAtLow().amount())
                .put("savingAtHigh", bar.savingAtHigh().amount())
                .build();
    }

    private static Json step(Findings.Step step) {
        return Json.object()
                .put("draws", step.draws())
                .put("chanceOwningIsCheaper", number(step.chanceOwningIsCheaper()))
                .put("error", number(step.error()))
                .put("meanSaving", step.meanSaving().amount())
                .build();
    }

    private static Json bin(Findings.Bin bin) {
        return Json.object()
                .put("from", bin.from().amount())
                .put("until", bin.until().amount())
                .put("draws", bin.draws())
                .build();
    }
}
