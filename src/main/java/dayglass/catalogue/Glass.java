package dayglass.catalogue;

import dayglass.optics.FitQuestion;
import dayglass.optics.Mounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A lens model, perhaps with an attachment before it, as what a fit asks about. What its record lacks is named, not guessed. */
public record Glass(LensModel lens, Optional<LensModel> attachment) {
    private static final String DUAL = "dual";

    /** What keeps it from being judged, in phrases; empty where nothing does. */
    public List<String> lacks(Mounts mounts) {
        List<String> lacks = new ArrayList<>();
        LensModel.OpticalRecord record = lens.record();
        require(lacks, record.focalMm().isPresent(), lens, "a focal length");
        require(lacks, record.tStop().isPresent(), lens, "a T-stop");
        require(lacks, !record.mounts().isEmpty(), lens, "a mount");
        record.mounts().stream()
                .filter(mount -> mounts.flangeMm(mount).isEmpty())
                .forEach(mount -> lacks.add("the mount " + mount + " of " + lens.fullName()
                        + " is not known: add it to the mounts with its flange focal distance"));
        attachment.ifPresent(front -> require(lacks, front.record().focusing().isPresent(), front, "its focusing"));
        return lacks;
    }

    private static void require(List<String> lacks, boolean there, LensModel model, String what) {
        if (!there) {
            lacks.add(model.fullName() + " lacks " + what);
        }
    }

    public String name() {
        return lens.fullName()
                + attachment.map(front -> " behind " + front.fullName()).orElse("");
    }

    /** The question about it; empty where its record lacks something. */
    public Optional<FitQuestion> on(FitQuestion.Setting setting) {
        return lacks(setting.mounts()).isEmpty()
                ? Optional.of(setting.of(lensOf(lens.record()), attachment.map(front -> attachmentOf(front.record()))))
                : Optional.empty();
    }

    private static FitQuestion.Lens lensOf(LensModel.OpticalRecord record) {
        return new FitQuestion.Lens(
                Stream.concat(record.focalMm().stream(), record.longestFocalMm().stream())
                        .toList(),
                record.tStop().orElseThrow(),
                record.squeeze(),
                record.imageCircleMm(),
                record.mounts(),
                record.closeFocusM(),
                record.frontMm(),
                record.weightG(),
                record.closeDownStops().orElse(BigDecimal.ZERO));
    }

    /** What an attachment's record says; of one that needs one taking lens only, both ends are that. */
    public static FitQuestion.Attachment attachmentOf(LensModel.OpticalRecord record) {
        return new FitQuestion.Attachment(
                record.squeeze(),
                record.lightLossStops().orElse(BigDecimal.ZERO),
                record.closeDownStops().orElse(BigDecimal.ZERO),
                record.focalMm(),
                record.longestFocalMm().or(record::focalMm),
                record.frontMm(),
                record.weightG(),
                record.closeFocusM(),
                record.focusing().filter(DUAL::equals).isPresent());
    }
}
