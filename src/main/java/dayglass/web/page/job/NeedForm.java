package dayglass.web.page.job;

import dayglass.base.Fault;
import dayglass.web.page.form.Form;
import dayglass.wire.Json;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;

/** The form that adds a need: a slot, how many, and either the uses on which or the dates on which it is needed. */
final class NeedForm {
    private NeedForm() {}

    static Json json(Context ctx, Form form) {
        Json.Members need = Json.object();
        if (form.has("slot")) {
            need.put("slot", form.value("slot").strip());
        }
        String count = form.value("count").strip();
        if (!count.isEmpty()) {
            need.put("count", count.matches("-?(0|[1-9][0-9]*)") ? new Json.Num(count) : Json.text(count));
        }
        if (form.has("from") || form.has("to")) {
            Json.Members span = Json.object();
            put(span, "from", form);
            put(span, "to", form);
            return need.put("dates", Json.list(List.of(span.build()))).build();
        }
        return need.put("on", Json.texts(ctx.formParams("on"))).build();
    }

    private static void put(Json.Members span, String name, Form form) {
        if (form.has(name)) {
            span.put(name, form.value(name).strip());
        }
    }

    /** The faults of the one need by the names of the form's fields. */
    static List<Fault> atFields(List<Fault> faults) {
        List<Fault> placed = new ArrayList<>();
        for (Fault fault : faults) {
            String field = fault.pointer().replaceFirst("^/0/?(dates(/0)?/?)?", "");
            placed.add(new Fault(field.isEmpty() ? "from" : field.replaceFirst("/.*", ""), fault.message()));
        }
        return placed;
    }
}
