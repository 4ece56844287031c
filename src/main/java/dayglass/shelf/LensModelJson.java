package dayglass.shelf;

import dayglass.catalogue.LensModel;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A lens model's facts: the optical record under the names that a fit asks for it by, and the look grades. */
public final class LensModelJson {
    private static final int BEST_GRADE = 5;
    private static final int LONGEST_TEXT = 2_000;

    private LensModelJson() {}

    public static Reader<LensModel> reader() {
        return Fields.object(LensModelJson::read);
    }

    private static Read<LensModel> read(Fields fields) {
        Read<String> maker = fields.required("maker", Readers.name());
        Read<String> name = fields.required("name", Readers.name());
        Read<LensModel.Kind> kind = fields.required("kind", Readers.word(kinds()));
        Read<LensModel.OpticalRecord> record = OpticalJson.read(fields, kind);
        Read<LensModel.Grades> look =
                fields.optional("look", Fields.object(LensModelJson::look), LensModel.Grades.NONE);
        Read<List<String>> tags = fields.optional("tags", Readers.distinct(Readers.name()), List.of());
        Read<List<String>> cautions =
                fields.optional("cautions", Readers.distinct(Readers.text(LONGEST_TEXT)), List.of());
        return fields.build(() -> new LensModel(
                maker.get(), name.get(), kind.get(), record.get(), look.get(), tags.get(), cautions.get()));
    }

    private static Map<String, LensModel.Kind> kinds() {
        Map<String, LensModel.Kind> kinds = new LinkedHashMap<>();
        for (LensModel.Kind kind : LensModel.Kind.values()) {
            kinds.put(kind.word(), kind);
        }
        return kinds;
    }

    /** The member that a look's grade stands under: {@code outOfFocusShape}. */
    public static String memberOf(LensModel.Look look) {
        return switch (look) {
            case FLARE -> "flare";
            case OUT_OF_FOCUS_SHAPE -> "outOfFocusShape";
            case DISTORTION -> "distortion";
            case EDGE_SHARPNESS -> "edgeSharpness";
            case COLOUR -> "colour";
        };
    }

    private static Read<LensModel.Grades> look(Fields fields) {
        Map<LensModel.Look, Integer> grades = new EnumMap<>(LensModel.Look.class);
        for (LensModel.Look look : LensModel.Look.values()) {
            fields.optional(memberOf(look), Readers.whole(1, BEST_GRADE))
                    .found()
                    .flatMap(grade -> grade)
                    .ifPresent(grade -> grades.put(look, grade));
        }
        Read<String> note = fields.optional("note", Readers.text(LONGEST_TEXT), "");
        Read<Optional<LocalDate>> testedOn = fields.optional("testedOn", Readers.date());
        return fields.build(() -> new LensModel.Grades(grades, note.get(), testedOn.get()));
    }

    public static void write(Json.Members members, LensModel model) {
        members.put("maker", model.maker())
                .put("name", model.name())
                .put("kind", model.kind().word());
        OpticalJson.write(members, model.record());
        if (!model.grades().equals(LensModel.Grades.NONE)) {
            members.put("look", look(model.grades()));
        }
        if (!model.tags().isEmpty()) {
            members.put("tags", Json.texts(model.tags()));
        }
        if (!model.cautions().isEmpty()) {
            members.put("cautions", Json.texts(model.cautions()));
        }
    }

    private static Json look(LensModel.Grades grades) {
        Json.Members members = Json.object();
        for (LensModel.Look look : LensModel.Look.values()) {
            Integer grade = grades.byLook().get(look);
            if (grade != null) {
                members.put(memberOf(look), grade);
            }
        }
        if (!grades.note().isEmpty()) {
            members.put("note", grades.note());
        }
        grades.testedOn().ifPresent(day -> members.put("testedOn", day.toString()));
        return members.build();
    }

    public static Json.Obj write(LensModel model) {
        Json.Members members = Json.object();
        write(members, model);
        return members.build();
    }
}
