package dayglass.wire.costing;

import dayglass.base.DateRange;
import dayglass.cost.DayUse;
import dayglass.cost.plan.Question;
import dayglass.wire.Fields;
import dayglass.wire.Part;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a job needs: so many of each slot, on the days of some uses or on dates. */
public final class NeedsReader {
    /** Different slots, at most. */
    public static final int MOST_SLOTS = 64;
    /** Wanted of a slot by one need, at most. */
    public static final int MOST_COUNT = 100;
    /** When neither uses nor dates are given. */
    public static final Set<DayUse> DEFAULT_ON = Set.of(DayUse.PREP, DayUse.SHOOT);

    private NeedsReader() {}

    /**
     * Needs inside a horizon.
     *
     * @param horizon where it is itself at fault, dates are not held against it
     */
    public static Reader<List<Question.Need>> needs(Read<DateRange> horizon) {
        Reader<List<Part<String, Question.Need>>> list =
                Readers.notEmpty(Part.list(Fields.object(fields -> need(fields, horizon))));
        return (json, place) -> list.read(json, place).map(parts -> {
            requireFewSlots(parts, place);
            return Part.goodValues(parts);
        });
    }

    private static Read<Part<String, Question.Need>> need(Fields fields, Read<DateRange> horizon) {
        Read<String> slot = fields.required("slot", Readers.name());
        Read<Integer> count = fields.required("count", Readers.whole(1, MOST_COUNT));
        Read<List<DayUse>> on = fields.optional(
                "on",
                Readers.notEmpty(Readers.distinct(ScheduleReader.use())),
                fields.has("dates") ? List.of() : List.copyOf(DEFAULT_ON));
        Read<List<DateRange>> dates = fields.optional("dates", datesInside(horizon), List.of());
        if (fields.has("on") && fields.has("dates")) {
            fields.place()
                    .fault(
                            "gives both \"on\" and \"dates\": keep the one that says when it is needed",
                            "name the uses or the dates, not both");
        }
        Read<Question.Need> need =
                fields.build(() -> new Question.Need(slot.get(), count.get(), Set.copyOf(on.get()), dates.get()));
        return Read.good(new Part<>(fields.place(), slot, need));
    }

    private static Reader<List<DateRange>> datesInside(Read<DateRange> horizon) {
        Reader<List<Part<DateRange, DateRange>>> list = SpanReader.list(fields -> {
            Read<DateRange> dates = SpanReader.dates(fields);
            return Read.good(new Part<>(fields.place(), dates, fields.build(dates::get)));
        });
        return (json, place) -> list.read(json, place).map(parts -> {
            horizon.found().ifPresent(found -> parts.forEach(part -> requireInside(found, part)));
            return inOrder(Part.goodValues(parts));
        });
    }

    private static List<DateRange> inOrder(List<DateRange> dates) {
        List<DateRange> sorted = new ArrayList<>(dates);
        sorted.sort((a, b) -> a.from().compareTo(b.from()));
        return sorted;
    }

    private static void requireInside(DateRange horizon, Part<DateRange, DateRange> part) {
        boolean outside = part.key()
                .found()
                .filter(dates ->
                        dates.from().isBefore(horizon.from()) || dates.until().isAfter(horizon.until()))
                .isPresent();
        if (outside) {
            part.place()
                    .fault("lies outside the schedule, which runs from " + horizon.from() + " to " + horizon.lastDay()
                            + ": keep it inside, or lengthen the schedule");
        }
    }

    private static void requireFewSlots(List<Part<String, Question.Need>> parts, Place place) {
        long slots = parts.stream()
                .flatMap(part -> part.key().found().stream())
                .distinct()
                .count();
        if (slots > MOST_SLOTS) {
            place.fault("names " + slots + " different slots: leave at most " + MOST_SLOTS);
        }
    }
}
