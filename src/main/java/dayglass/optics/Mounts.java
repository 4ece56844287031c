package dayglass.optics;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lens mounts with their flange focal distances in millimetres: those that are known to all, and a user's own. */
public final class Mounts {
    /** Flange focal distances, published but for {@link #FROM_MEMORY}. */
    public static final Mounts KNOWN = new Mounts(known());

    /** Those of {@link #KNOWN} whose distance is from memory and was not seen in print. */
    public static final Set<String> FROM_MEMORY = Set.of("MFT", "L", "LPL", "B4");

    private final Map<String, BigDecimal> flangeMm;

    private Mounts(Map<String, BigDecimal> flangeMm) {
        this.flangeMm = Collections.unmodifiableMap(flangeMm);
    }

    private static Map<String, BigDecimal> known() {
        Map<String, BigDecimal> known = new LinkedHashMap<>();
        known.put("PL", new BigDecimal("52.00"));
        known.put("F", new BigDecimal("46.50"));
        known.put("EF", new BigDecimal("44.00"));
        known.put("K", new BigDecimal("45.46"));
        known.put("M42", new BigDecimal("45.46"));
        known.put("Four Thirds", new BigDecimal("38.67"));
        known.put("M", new BigDecimal("27.80"));
        known.put("E", new BigDecimal("18"));
        known.put("C", new BigDecimal("17.526"));
        known.put("CS", new BigDecimal("12.526"));
        known.put("MFT", new BigDecimal("19.25"));
        known.put("L", new BigDecimal("20.00"));
        known.put("LPL", new BigDecimal("44.00"));
        known.put("B4", new BigDecimal("48.00"));
        return known;
    }

    /**
     * These and a user's own.
     *
     * @throws IllegalArgumentException where one is redefined
     */
    public Mounts and(Map<String, BigDecimal> more) {
        Map<String, BigDecimal> all = new LinkedHashMap<>(flangeMm);
        more.forEach((name, mm) -> {
            if (all.putIfAbsent(name, mm) != null) {
                throw new IllegalArgumentException("the mount " + name + " is known already");
            }
        });
        return new Mounts(all);
    }

    public Optional<BigDecimal> flangeMm(String mount) {
        return Optional.ofNullable(flangeMm.get(mount));
    }

    /** By name, in the order in which they are shown. */
    public Map<String, BigDecimal> byName() {
        return flangeMm;
    }
}
