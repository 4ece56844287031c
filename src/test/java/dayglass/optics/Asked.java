package dayglass.optics;

import dayglass.optics.FitQuestion.Attachment;
import dayglass.optics.FitQuestion.Camera;
import dayglass.optics.FitQuestion.Lens;
import dayglass.optics.FitQuestion.Light;
import dayglass.optics.FitQuestion.OnSet;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Questions for tests, from the fewest facts on; each step gives a changed copy. */
public record Asked(Camera camera, String aspect, Light light, OnSet set, Lens lens, Optional<Attachment> attachment) {
    /** A 50 mm T2 lens without squeeze on a sensor, both of one mount. */
    public static Asked on(String width, String height) {
        return new Asked(
                new Camera(new BigDecimal(width), new BigDecimal(height), Optional.empty(), "PL"),
                "2.39",
                Light.NOT_ASKED,
                OnSet.NOT_ASKED,
                new Lens(
                        List.of(new BigDecimal(50)),
                        new BigDecimal(2),
                        BigDecimal.ONE,
                        Optional.empty(),
                        List.of("PL"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ZERO),
                Optional.empty());
    }

    public Asked delivering(String newAspect) {
        return new Asked(camera, newAspect, light, set, lens, attachment);
    }

    public Asked through(Lens newLens) {
        return new Asked(camera, aspect, light, set, newLens, attachment);
    }

    public Asked behind(Attachment newAttachment) {
        return new Asked(camera, aspect, light, set, lens, Optional.of(newAttachment));
    }

    public Asked onSet(OnSet newSet) {
        return new Asked(camera, aspect, light, newSet, lens, attachment);
    }

    public Asked mountedOn(String mount) {
        return new Asked(
                new Camera(camera.width(), camera.height(), camera.photosites(), mount),
                aspect,
                light,
                set,
                lens,
                attachment);
    }

    public Asked squeezed(String squeeze) {
        return through(lens(lens.focals(), lens.tStop(), squeeze, lens.imageCircle(), lens.mounts()));
    }

    public Asked focal(String... mm) {
        List<BigDecimal> focals =
                java.util.Arrays.stream(mm).map(BigDecimal::new).toList();
        return through(lens(focals, lens.tStop(), lens.squeeze().toString(), lens.imageCircle(), lens.mounts()));
    }

    public Asked tStop(String tStop) {
        return through(lens(
                lens.focals(), new BigDecimal(tStop), lens.squeeze().toString(), lens.imageCircle(), lens.mounts()));
    }

    public Asked imageCircle(String mm) {
        return through(lens(
                lens.focals(),
                lens.tStop(),
                lens.squeeze().toString(),
                Optional.of(new BigDecimal(mm)),
                lens.mounts()));
    }

    public Asked mounts(String... mounts) {
        return through(
                lens(lens.focals(), lens.tStop(), lens.squeeze().toString(), lens.imageCircle(), List.of(mounts)));
    }

    private Lens lens(
            List<BigDecimal> focals,
            BigDecimal tStop,
            String squeeze,
            Optional<BigDecimal> circle,
            List<String> mounts) {
        return new Lens(
                focals,
                tStop,
                new BigDecimal(squeeze),
                circle,
                mounts,
                lens.closeFocusM(),
                lens.frontMm(),
                lens.weightG(),
                lens.closeDownStops());
    }

    /** In this light: lux, speed, frames a second, shutter angle in degrees, stops that filters take. */
    public Asked in(String lux, int iso, String framesPerSecond, String angle, String filterStops) {
        Light newLight = new Light(
                Optional.of(new BigDecimal(lux)),
                Optional.of(iso),
                Optional.of(new BigDecimal(framesPerSecond)),
                Optional.of(new BigDecimal(angle)),
                new BigDecimal(filterStops));
        return new Asked(camera, aspect, newLight, set, lens, attachment);
    }

    public FitQuestion question() {
        return new FitQuestion(camera, new BigDecimal(aspect), light, set, lens, attachment, Mounts.KNOWN);
    }
}
