package dayglass.wire.costing;

import dayglass.base.DateRange;
import dayglass.cost.plan.Question;
import dayglass.wire.Fields;
import dayglass.wire.Part;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.List;
import java.util.Map;

/** A unit that is there already. */
public final class OwnedReader {
    private OwnedReader() {}

    /** An owned unit of a request; its key is its id. */
    static Reader<Part<String, Question.Owned>> option() {
        return Fields.object(OwnedReader::owned);
    }

    public static Reader<Question.Owned> unit() {
        return Fields.object(fields -> owned(fields).get().value());
    }

    private static Read<Part<String, Question.Owned>> owned(Fields fields) {
        Read<String> id = fields.required("id", Readers.name());
        Read<Map<String, Integer>> covers = fields.required("covers", CoversReader.covers());
        Read<List<DateRange>> available = fields.optional("available", SpanReader.spans(), List.of());
        Read<Question.Owned> unit = fields.build(() -> new Question.Owned(id.get(), covers.get(), available.get()));
        return Read.good(new Part<>(fields.place(), id, unit));
    }
}
