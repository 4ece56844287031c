package dayglass.wire;

import dayglass.base.Fault;
import java.util.ArrayList;
import java.util.List;

/** The faults of one text as they are found. */
public final class Faults {
    /** More are counted but not kept: a text of 2 MiB can hold a million of them. */
    public static final int MOST_KEPT = 250_000;

    private final Listener listener;
    private final List<Fault> kept = new ArrayList<>();
    private int count;

    /** @param listener to whom they are told */
    public Faults(Listener listener) {
        this.listener = listener;
    }

    Listener listener() {
        return listener;
    }

    void add(Place place, String message) {
        count++;
        if (kept.size() < MOST_KEPT) {
            kept.add(new Fault(place.pointer(), message));
        }
    }

    int count() {
        return count;
    }

    List<Fault> kept() {
        return List.copyOf(kept);
    }
}
