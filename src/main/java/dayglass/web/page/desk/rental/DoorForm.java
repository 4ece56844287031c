package dayglass.web.page.desk.rental;

import dayglass.web.page.form.Form;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Json;
import java.util.ArrayList;
import java.util.List;

/** The form of the door: a row a unit, of which those count that are ticked, each with its accessories ticked. */
final class DoorForm {
    private DoorForm() {}

    /** What it stands for. */
    static Json json(Form form) {
        List<Json> units = new ArrayList<>();
        for (int row = 0; row < form.rows("/units"); row++) {
            String at = "/units/" + row + "/";
            if (PathNumbers.of(form.value(at + "unitId")).isPresent()) {
                Json.Members unit = Json.object()
                        .put("unitId", PathNumbers.of(form.value(at + "unitId")).getAsLong())
                        .put("accessories", Json.texts(ticked(form, at + "accessories/")));
                if (form.has(at + "condition")) {
                    unit.put("condition", form.value(at + "condition").strip());
                }
                units.add(unit.build());
            }
        }
        Json.Members members = Json.object().put("units", Json.list(units));
        if (form.has("/reason")) {
            members.put("reason", form.value("/reason").strip());
        }
        return members.build();
    }

    private static List<String> ticked(Form form, String prefix) {
        return form.values().entrySet().stream()
                .filter(field -> field.getKey().startsWith(prefix))
                .map(field -> field.getValue().strip())
                .filter(value -> !value.isEmpty())
                .distinct()
                .toList();
    }
}
