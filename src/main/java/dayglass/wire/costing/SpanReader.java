package dayglass.wire.costing;

import dayglass.base.DateRange;
import dayglass.wire.Fields;
import dayglass.wire.Part;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Spans of days: {@code from} and {@code to}, both included; without {@code to} one day. */
public final class SpanReader {
    private SpanReader() {}

    /** A list of spans, not empty, of which none overlaps another. */
    public static Reader<List<DateRange>> spans() {
        return list(fields -> {
                    Read<DateRange> dates = dates(fields);
                    return Read.good(new Part<>(fields.place(), dates, fields.build(dates::get)));
                })
                .map(Part::goodValues);
    }

    /** A list of objects that are spans and perhaps more; the key of each is its dates. */
    static <T> Reader<List<Part<DateRange, T>>> list(Fields.Body<Part<DateRange, T>> span) {
        Reader<List<Part<DateRange, T>>> list = Readers.notEmpty(Part.list(Fields.object(span)));
        return (json, place) -> {
            Read<List<Part<DateRange, T>>> parts = list.read(json, place);
            parts.found().ifPresent(SpanReader::requireApart);
            return parts;
        };
    }

    /** The dates that an object's {@code from} and {@code to} say. */
    static Read<DateRange> dates(Fields fields) {
        Read<LocalDate> from = fields.required("from", Readers.date());
        Read<Optional<LocalDate>> to = fields.optional("to", Readers.date());
        if (!from.isGood() || !to.isGood()) {
            return Read.bad();
        }
        LocalDate last = to.get().orElse(from.get());
        return last.isBefore(from.get())
                ? fields.place()
                        .fault("ends on " + last + ", before it starts on " + from.get() + ": swap the two days")
                : Read.good(DateRange.inclusive(from.get(), last));
    }

    /** From the first day of all spans to the last; at fault where one of them is. */
    static <T> Read<DateRange> hull(List<Part<DateRange, T>> parts) {
        if (parts.isEmpty() || !parts.stream().allMatch(part -> part.key().isGood())) {
            return Read.bad();
        }
        LocalDate from = parts.stream()
                .map(part -> part.key().get().from())
                .min(LocalDate::compareTo)
                .orElseThrow();
        LocalDate until = parts.stream()
                .map(part -> part.key().get().until())
                .max(LocalDate::compareTo)
                .orElseThrow();
        return Read.good(new DateRange(from, until));
    }

    /** Tells of each overlap the span that starts later; of two that start together, the later in the list. */
    private static <T> void requireApart(List<Part<DateRange, T>> parts) {
        List<Part<DateRange, T>> good = new ArrayList<>(
                parts.stream().filter(part -> part.key().isGood()).toList());
        good.sort(Comparator.comparing(part -> part.key().get().from()));
        LocalDate taken = LocalDate.MIN;
        for (Part<DateRange, T> part : good) {
            DateRange dates = part.key().get();
            if (dates.from().isBefore(taken)) {
                part.place().fault("overlaps a span that starts no later: let each day stand in one span only");
            }
            taken = dates.until().isAfter(taken) ? dates.until() : taken;
        }
    }
}
