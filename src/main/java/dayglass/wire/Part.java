package dayglass.wire;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * An entry of a list with the key by which entries are compared (an id, a span of dates, a number of months), which may
 * be good where the rest of the entry is at fault.
 */
public record Part<K, T>(Place place, Read<K> key, Read<T> value) {

    /** An entry that is its own key. */
    public static <T> Reader<Part<T, T>> whole(Reader<T> reader) {
        return (json, place) -> {
            Read<T> read = reader.read(json, place);
            return Read.good(new Part<>(place, read, read));
        };
    }

    /** A list with all its entries, the good and the bad; at fault only where it is no list. */
    public static <K, T> Reader<List<Part<K, T>>> list(Reader<Part<K, T>> reader) {
        return (json, place) -> {
            if (!(json instanceof Json.Arr list)) {
                return place.fault("must be a list in square brackets, not " + json.kind());
            }
            List<Part<K, T>> parts = new ArrayList<>();
            for (int i = 0; i < list.entries().size(); i++) {
                parts.add(entry(list.entries().get(i), place.entry(i), reader));
            }
            return Read.good(parts);
        };
    }

    private static <K, T> Part<K, T> entry(Json json, Place place, Reader<Part<K, T>> reader) {
        Optional<Part<K, T>> part = reader.read(json, place).found();
        return part.orElseGet(() -> new Part<>(place, Read.bad(), Read.bad()));
    }

    /**
     * Tells every entry whose key an earlier one has.
     *
     * @param at where that is told
     */
    public static <K, T> void requireDistinct(
            List<Part<K, T>> parts, Function<Part<K, T>, Place> at, String alreadyThere) {
        Set<K> seen = new HashSet<>();
        for (Part<K, T> part : parts) {
            if (part.key().isGood() && !seen.add(part.key().get())) {
                at.apply(part).fault(alreadyThere + ": remove it or change it");
            }
        }
    }

    /** The values of the entries that are not at fault. */
    public static <K, T> List<T> goodValues(List<Part<K, T>> parts) {
        return parts.stream().flatMap(part -> part.value().found().stream()).toList();
    }
}
