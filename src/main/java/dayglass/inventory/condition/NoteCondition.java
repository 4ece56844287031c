package dayglass.inventory.condition;

import dayglass.base.Fault;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.WhoActs;
import dayglass.inventory.Unit;
import dayglass.inventory.Units;
import dayglass.inventory.picture.Picture;
import dayglass.inventory.picture.Pictures;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** Notes what whoever acts sees on a unit now, with pictures of it. */
public final class NoteCondition {
    /** A note shows at most so many pictures. */
    public static final int MOST_PICTURES = 8;

    private final Units units;
    private final ConditionNotes notes;
    private final Pictures pictures;
    private final WhoActs whoActs;
    private final Clock clock;

    /** Notes and pictures that are kept already. */
    public record Kept(ConditionNotes notes, Pictures pictures) {}

    public NoteCondition(Units units, Kept kept, WhoActs whoActs, Clock clock) {
        this.units = units;
        this.notes = kept.notes();
        this.pictures = kept.pictures();
        this.whoActs = whoActs;
        this.clock = clock;
    }

    /**
     * Keeps the pictures first and then the note, so that no note ever shows a picture that is not there.
     *
     * @param sent the pictures' bytes
     */
    public Outcome<Stored<ConditionNote.Id, ConditionNote>> note(
            Unit.Id unit, Observation seen, List<ConditionNote.Id> resolves, List<byte[]> sent) {
        if (sent.size() > MOST_PICTURES) {
            return Outcome.faulty("/pictures", "has " + sent.size() + " pictures: send at most " + MOST_PICTURES);
        }
        if (units.find(unit).isEmpty()) {
            return Outcome.refused(Problem.Code.NOT_FOUND, "There is no unit with the id " + unit.number() + ".");
        }
        return keep(sent)
                .then(kept -> notes.add(new ConditionNote(
                        unit, clock.instant().truncatedTo(ChronoUnit.SECONDS), whoActs.now(), seen, resolves, kept)));
    }

    private Outcome<List<Picture>> keep(List<byte[]> sent) {
        List<Picture> kept = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (int at = 0; at < sent.size(); at++) {
            String pointer = "/pictures/" + at;
            pictures.keep(sent.get(at)).fold(kept::add, problem -> faults.add(new Fault(pointer, problem.detail())));
        }
        return faults.isEmpty() ? Outcome.done(kept) : Outcome.refused(Problem.faulty(faults));
    }
}
