package dayglass.wire.costing;

import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.ownership.PurchaseTerms.Point;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Part;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a purchase sells for: a yearly loss, or points in time. */
final class ResaleReader {
    private static final String LOSS = "lossPercentPerYear";
    private static final String POINTS = "points";

    private final Reader<Money> money;

    private ResaleReader(Reader<Money> money) {
        this.money = money;
    }

    static Reader<PurchaseTerms.Resale> resale(Reader<Money> money) {
        ResaleReader reader = new ResaleReader(money);
        return Fields.object(reader::read);
    }

    private Read<PurchaseTerms.Resale> read(Fields fields) {
        Read<Optional<Percent>> loss = fields.optional(LOSS, Decimals.percent(-100, 100));
        Read<Optional<List<Point>>> points = fields.optional(POINTS, Readers.notEmpty(this::points));
        Read<Percent> sellingCost = fields.optional("sellingCostPercent", Decimals.percent(0, 100), Percent.ZERO);
        if (fields.has(LOSS) == fields.has(POINTS)) {
            boolean both = fields.has(LOSS);
            fields.place()
                    .fault(
                            "gives " + (both ? "both" : "neither") + " \"" + LOSS + "\" and \"" + POINTS
                                    + "\": give one of the two",
                            both
                                    ? "give the loss a year or the values at months, not both"
                                    : "give the loss a year, or else values at months");
        }
        return fields.build(() -> new PurchaseTerms.Resale(value(loss.get(), points.get()), sellingCost.get()));
    }

    private static PurchaseTerms.ResaleValue value(Optional<Percent> loss, Optional<List<Point>> points) {
        return loss.<PurchaseTerms.ResaleValue>map(PurchaseTerms.YearlyLoss::new)
                .orElseGet(() -> new PurchaseTerms.Points(points.orElseThrow()));
    }

    private Read<List<Point>> points(Json json, Place place) {
        Read<List<Part<Integer, Point>>> parts =
                Part.list(Fields.object(this::point)).read(json, place);
        parts.found()
                .ifPresent(list -> Part.requireDistinct(list, Part::place, "an earlier point is of the same month"));
        return parts.map(list -> Part.goodValues(list).stream()
                .sorted(Comparator.comparingInt(Point::months))
                .toList());
    }

    private Read<Part<Integer, Point>> point(Fields fields) {
        Read<Integer> months = fields.required("months", Readers.whole(0, PurchaseReader.MOST_MONTHS));
        Read<Money> value = fields.required("value", money);
        Read<Point> point = fields.build(() -> new Point(months.get(), value.get()));
        return Read.good(new Part<>(fields.place(), months, point));
    }
}
