package dayglass.inventory.booking;

/**
 * Why a unit should not be handed over.
 *
 * @param why one sentence
 * @param overridable whether a named person may let it out all the same, with a reason
 */
public record Obstacle(String why, boolean overridable) {
    static Obstacle last(String why) {
        return new Obstacle(why, false);
    }
}
