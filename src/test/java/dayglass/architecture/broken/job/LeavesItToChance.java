package dayglass.architecture.broken.job;

import java.util.Random;

/** Breaks a rule of the house on purpose, or is what another class breaks it with. */
public final class LeavesItToChance {
    static int any() {
        return new Random().nextInt();
    }
}
