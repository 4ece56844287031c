package dayglass.wire.fit;

import dayglass.optics.Mounts;
import dayglass.wire.Decimals;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * A request's own mounts: an object of flange focal distances by name, beside those that are known already.
 *
 * @param known to all, and to whoever is asked
 * @param names all that the request names, those at fault too, so that their use is no second fault
 * @param own those that are good
 */
record MountTable(Mounts known, Set<String> names, Map<String, BigDecimal> own) {
    static MountTable of(Mounts known) {
        return new MountTable(known, Set.of(), Map.of());
    }

    static Reader<MountTable> reader(MountTable beside) {
        return (json, place) -> json instanceof Json.Obj object
                ? Read.good(read(beside.known(), object, place))
                : place.fault("must be an object of mounts and their flange focal distances, such as"
                        + " {\"Bayonet 9\": \"48.50\"}, not " + json.kind());
    }

    private static MountTable read(Mounts known, Json.Obj object, Place place) {
        Set<String> names = new LinkedHashSet<>(object.members().keySet());
        Map<String, BigDecimal> own = new LinkedHashMap<>();
        object.members().forEach((name, value) -> {
            Place at = place.member(name);
            if (object.repeated().contains(name)) {
                at.fault("this mount is given twice: keep one");
            } else if (known.flangeMm(name).isPresent()) {
                at.fault("this mount is known already and may not be defined again: remove it, or name yours apart");
            } else if (Readers.checkText(name, Readers.MOST_NAME_CHARACTERS, at).isGood()) {
                Decimals.positive().read(value, at).found().ifPresent(mm -> own.put(name, mm));
            }
        });
        return new MountTable(known, names, own);
    }

    Mounts mounts() {
        return known.and(own);
    }

    /** The name of a mount that is known; not checked where the table itself cannot be read. */
    static Reader<String> known(Read<MountTable> table) {
        return (json, place) -> {
            Read<String> name = Readers.name().read(json, place);
            if (!name.isGood() || !table.isGood()) {
                return name;
            }
            Mounts known = table.get().known();
            return known.flangeMm(name.get()).isPresent() || table.get().names().contains(name.get())
                    ? name
                    : place.fault("no mount of that name is known: use one of "
                            + String.join(", ", known.byName().keySet())
                            + ", or give its flange focal distance in mountTable");
        };
    }
}
