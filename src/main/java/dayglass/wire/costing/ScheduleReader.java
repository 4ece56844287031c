package dayglass.wire.costing;

import dayglass.base.DateRange;
import dayglass.cost.DayUse;
import dayglass.cost.Schedule;
import dayglass.wire.Fields;
import dayglass.wire.Part;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A job's schedule: spans of days, each with its use. */
public final class ScheduleReader {
    private ScheduleReader() {}

    /**
     * A schedule as far as it could be read.
     *
     * @param horizon good wherever every span's dates are, whatever else is at fault
     */
    record Days(Read<DateRange> horizon, Read<Schedule> schedule) {}

    public static Reader<Schedule> schedule() {
        return (json, place) -> {
            Read<Days> days = days().read(json, place);
            return days.isGood() ? days.get().schedule() : Read.bad();
        };
    }

    static Reader<Days> days() {
        Reader<List<Part<DateRange, Schedule.Span>>> spans = SpanReader.list(ScheduleReader::span);
        return (json, place) -> {
            int before = place.faultsSoFar();
            return spans.read(json, place).map(parts -> {
                Read<DateRange> hull = SpanReader.hull(parts);
                // Nothing is held against a horizon that is itself at fault.
                Read<DateRange> horizon =
                        hull.found().map(found -> isShort(found, place)).orElse(true) ? hull : Read.bad();
                Read<Schedule> schedule =
                        place.faultsSoFar() == before ? Read.good(new Schedule(Part.goodValues(parts))) : Read.bad();
                return new Days(horizon, schedule);
            });
        };
    }

    /** What the production does on a day. */
    public static Reader<DayUse> use() {
        Map<String, DayUse> words = new LinkedHashMap<>();
        for (DayUse use : DayUse.values()) {
            words.put(use.word(), use);
        }
        return Readers.word(words);
    }

    private static Read<Part<DateRange, Schedule.Span>> span(Fields fields) {
        Read<DateRange> dates = SpanReader.dates(fields);
        Read<DayUse> use = fields.required("use", use());
        Read<Schedule.Span> span = fields.build(() -> new Schedule.Span(dates.get(), use.get()));
        return Read.good(new Part<>(fields.place(), dates, span));
    }

    private static boolean isShort(DateRange horizon, Place place) {
        boolean fits = horizon.days() <= Schedule.MOST_DAYS;
        if (!fits) {
            place.fault("runs over " + horizon.days() + " days, from " + horizon.from() + " to " + horizon.lastDay()
                    + ": shorten it to at most " + Schedule.MOST_DAYS);
        }
        return fits;
    }
}
