package dayglass.planning.glass;

import dayglass.job.Brief;
import dayglass.optics.Mounts;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Judges glass against a brief, each kind once; the threads of one sheet share it. */
public final class Judging {
    private final Brief brief;
    private final Mounts mounts;
    private final Map<JudgedGlass.Models, JudgedGlass> judged = new ConcurrentHashMap<>();

    public Judging(Brief brief, Mounts mounts) {
        this.brief = brief;
        this.mounts = mounts;
    }

    public Brief brief() {
        return brief;
    }

    /**
     * What is known of a piece; of what goes with a lens and declares slots without a focal length, only its word.
     *
     * @param declared what it says itself that it covers
     */
    public PieceCover.Piece piece(String option, Map<String, Integer> declared, List<JudgedGlass.Models> glass) {
        boolean accessory = glass.stream().noneMatch(JudgedGlass.Models::isLens)
                && declared.keySet().stream()
                        .anyMatch(slot -> brief.focalOf(slot).isEmpty());
        return new PieceCover.Piece(
                option,
                declared,
                accessory ? List.of() : glass.stream().map(this::judge).toList());
    }

    private JudgedGlass judge(JudgedGlass.Models models) {
        return judged.computeIfAbsent(models, each -> JudgedGlass.of(each, brief, mounts));
    }
}
