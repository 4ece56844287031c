package dayglass.catalogue;

import dayglass.optics.FitQuestion;

/**
 * A user's own camera in one recorded mode.
 *
 * @param mode how it records; name and mode together are unique
 * @param recorded the part of the sensor that is recorded, and the mount
 */
public record Camera(String name, String mode, FitQuestion.Camera recorded) {
    /** The number of a camera. */
    public record Id(long number) implements dayglass.base.Id {}
}
