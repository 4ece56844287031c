package dayglass.web.api;

import dayglass.base.Id;
import dayglass.base.VersionedCollection;
import dayglass.wire.Json;
import dayglass.wire.Reader;
import java.util.function.BiConsumer;
import java.util.function.LongFunction;

/**
 * How one kind of thing stands on the wire.
 *
 * @param path of its collection, such as {@code /api/jobs}
 * @param noun for messages: {@code rate card}
 * @param reader of the facts in a body
 * @param writer of the facts, into the object that already has id and version
 */
public record Representation<I extends Id, T>(
        String path,
        String noun,
        VersionedCollection<I, T> all,
        LongFunction<I> idOf,
        Reader<T> reader,
        BiConsumer<Json.Members, T> writer) {}
