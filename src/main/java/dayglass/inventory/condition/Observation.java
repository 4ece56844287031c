package dayglass.inventory.condition;

import java.util.List;

/**
 * What somebody saw.
 *
 * @param finding one of {@link #SUGGESTED} or another word; not blank
 * @param quarantine the unit is to be kept in until a later note resolves this one, whatever the severity
 * @param words where exactly, how large, with what effect; may be empty
 */
public record Observation(Part part, String finding, Severity severity, boolean quarantine, String words) {
    /** Words of the trade for what is found on lenses; common practice. */
    public static final List<String> SUGGESTED = List.of(
            "haze",
            "fungus",
            "separation",
            "scratch",
            "cleaning marks",
            "coating wear",
            "oil",
            "stiffness",
            "play",
            "image shift",
            "off collimation",
            "dent",
            "missing part",
            "dust",
            "yellowing",
            "decentred");

    public Observation {
        if (finding.isBlank()) {
            throw new IllegalArgumentException("a finding needs a word");
        }
    }
}
