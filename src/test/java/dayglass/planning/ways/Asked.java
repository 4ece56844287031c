package dayglass.planning.ways;

import dayglass.base.Currency;
import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.catalogue.LensModel;
import dayglass.cost.plan.Question;
import dayglass.job.Brief;
import dayglass.job.Job;
import dayglass.optics.FitQuestion;
import dayglass.optics.Mounts;
import dayglass.planning.glass.JudgedGlass;
import dayglass.wire.costing.CostingRequestReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Briefs, glass and questions that tests ask with; all of it invented. */
public final class Asked {
    /** The diagonal of a sensor of 30 by 40 mm, which a picture of 4:3 uses whole, is 50 mm. */
    private static final FitQuestion.Camera CAMERA =
            new FitQuestion.Camera(new BigDecimal(40), new BigDecimal(30), Optional.empty(), "PL");

    private static final String COVERING = "50";
    private static final String SMALL = "20";

    private Asked() {}

    public static Brief brief() {
        return new Brief(
                new Job.Id(1),
                new Brief.Picture(
                        CAMERA,
                        new BigDecimal("1.3333333333"),
                        FitQuestion.Light.NOT_ASKED,
                        FitQuestion.OnSet.NOT_ASKED),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                Map.of(),
                Percent.of("10"));
    }

    /** A lens that covers the sensor; two focal lengths make a zoom. */
    public static JudgedGlass lens(int count, String... focals) {
        return glass(count, COVERING, focals);
    }

    /** A lens that does not reach the corners of the picture. */
    public static JudgedGlass small(String... focals) {
        return glass(1, SMALL, focals);
    }

    private static JudgedGlass glass(int count, String circle, String... focals) {
        List<BigDecimal> ends = Stream.of(focals).map(BigDecimal::new).toList();
        LensModel.Kind kind = ends.size() == 1 ? LensModel.Kind.SPHERICAL_PRIME : LensModel.Kind.SPHERICAL_ZOOM;
        LensModel model = new LensModel(
                "Vellum",
                String.join("-", focals) + " in " + circle,
                kind,
                new LensModel.OpticalRecord(
                        Optional.of(ends.get(0)),
                        ends.stream().skip(1).findFirst(),
                        Optional.of(new BigDecimal("2.8")),
                        BigDecimal.ONE,
                        Optional.of(new BigDecimal(circle)),
                        List.of("PL"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                LensModel.Grades.NONE,
                List.of(),
                List.of());
        return JudgedGlass.of(new JudgedGlass.Models(model, Optional.empty(), count), brief(), Mounts.KNOWN);
    }

    /** A costing request, which must be good. */
    public static Question question(String json) {
        return CostingRequestReader.read(json.getBytes(StandardCharsets.UTF_8)).fold(good -> good, faults -> {
            throw new AssertionError(faults.toString());
        });
    }

    public static Money euros(String amount) {
        return Money.of(Currency.of("EUR"), new BigDecimal(amount));
    }

    public static DateRange days(String first, String last) {
        return DateRange.inclusive(LocalDate.parse(first), LocalDate.parse(last));
    }
}
