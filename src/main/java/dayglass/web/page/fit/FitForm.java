package dayglass.web.page.fit;

import dayglass.catalogue.Camera;
import dayglass.optics.FitQuestion;
import dayglass.optics.Formats;
import dayglass.shelf.CameraJson;
import dayglass.web.page.form.Form;
import dayglass.wire.Json;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The JSON of a fit request that a form stands for; what was chosen from a list goes before what was typed. */
final class FitForm {
    private static final Set<String> WHOLE = Set.of("photositesWide", "photositesHigh", "iso", "payloadG", "weightG");
    private static final Pattern WHOLE_NUMBER = Pattern.compile("0|[1-9][0-9]{0,8}");
    private static final List<String> LIGHT = List.of("lux", "iso", "framesPerSecond", "shutterAngle", "filterStops");
    private static final List<String> ON_SET = List.of("closestSubjectM", "payloadG", "matteBoxMm");
    private static final List<String> LENS = List.of(
            "focal",
            "minFocal",
            "maxFocal",
            "tStop",
            "squeeze",
            "imageCircle",
            "closeFocusM",
            "frontMm",
            "weightG",
            "closeDownStops");
    private static final List<String> ATTACHMENT = List.of(
            "squeeze",
            "lightLossStops",
            "closeDownStops",
            "minFocal",
            "maxFocal",
            "frontMm",
            "weightG",
            "closeFocusM",
            "focusing");

    private FitForm() {}

    /**
     * The request.
     *
     * @param camera one of the user's own that was chosen
     * @param typedLens whether the lens is typed and not a model
     * @param typedAttachment whether an attachment is typed
     */
    static Json json(Form form, Optional<Camera> camera, boolean typedLens, boolean typedAttachment) {
        Json.Members request = Json.object()
                .put("camera", camera.map(FitForm::recorded).orElseGet(() -> typedCamera(form)))
                .put("delivery", part(form, "/delivery/", List.of("aspect")).build())
                .put("light", part(form, "/light/", LIGHT).build())
                .put("set", part(form, "/set/", ON_SET).build());
        if (typedLens) {
            Json.Members lens = part(form, "/lens/", LENS);
            if (!form.has("/lens/squeeze")) {
                lens.put("squeeze", "1");
            }
            request.put("lens", lens.put("mounts", Json.texts(mounts(form))).build());
        }
        if (typedAttachment) {
            request.put("attachment", part(form, "/attachment/", ATTACHMENT).build());
        }
        return request.build();
    }

    private static List<String> mounts(Form form) {
        return form.has("/lens/mounts") ? List.of(form.value("/lens/mounts").strip()) : List.of();
    }

    private static Json recorded(Camera camera) {
        Json.Members members = Json.object();
        CameraJson.writeRecorded(members, camera.recorded());
        return members.build();
    }

    private static Json typedCamera(Form form) {
        Optional<Formats.Format> format = Formats.FORMATS.stream()
                .filter(each -> form.value("format").equals(each.name()))
                .findFirst();
        return format.<Json>map(each -> Json.object()
                        .put("width", each.widthMm().toPlainString())
                        .put("height", each.heightMm().toPlainString())
                        .put("mount", form.value("/camera/mount"))
                        .build())
                .orElseGet(() -> part(
                                form,
                                "/camera/",
                                List.of("width", "height", "photositesWide", "photositesHigh", "mount"))
                        .build());
    }

    private static Json.Members part(Form form, String at, List<String> names) {
        Json.Members members = Json.object();
        for (String name : names) {
            String value = form.value(at + name).strip();
            if (!value.isEmpty()) {
                boolean whole =
                        WHOLE.contains(name) && WHOLE_NUMBER.matcher(value).matches();
                members.put(name, whole ? new Json.Num(value) : Json.text(value));
            }
        }
        return members;
    }

    /** A usual question, for somebody who has asked nothing yet. */
    static Form usual() {
        return Form.EMPTY
                .with("/delivery/aspect", "2.39")
                .with("/light/framesPerSecond", "24")
                .with("/light/shutterAngle", "180");
    }

    /** The camera in words. */
    static String words(FitQuestion.Camera camera) {
        return camera.width().toPlainString() + " × " + camera.height().toPlainString() + " mm"
                + camera.photosites()
                        .map(count -> ", " + count.wide() + " × " + count.high() + " photosites")
                        .orElse("")
                + ", " + camera.mount();
    }
}
