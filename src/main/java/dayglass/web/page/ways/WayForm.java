package dayglass.web.page.ways;

import dayglass.job.Way;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Json;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Between the form of a way and its JSON: a piece's source is one field, such as {@code offer/3} or {@code card/2/pair},
 * and pieces without one are left out with their glass.
 */
final class WayForm {
    private WayForm() {}

    /** The form with its pieces and their glass numbered without gaps. */
    static Form ordered(Form sent) {
        Map<String, String> values = new LinkedHashMap<>();
        sent.values().forEach((name, value) -> {
            if (!name.startsWith("/pieces/")) {
                values.put(name, value);
            }
        });
        int piece = 0;
        for (int row = 0; row < sent.rows("/pieces"); row++) {
            String from = "/pieces/" + row;
            if (sent.has(from + "/source")) {
                String to = "/pieces/" + piece++;
                values.put(to + "/source", sent.value(from + "/source"));
                glass(sent, from + "/glass", to + "/glass", values);
            }
        }
        return new Form(values, List.of(), "");
    }

    private static void glass(Form sent, String from, String to, Map<String, String> into) {
        int at = 0;
        for (int row = 0; row < sent.rows(from); row++) {
            if (sent.has(from + "/" + row + "/lensModel")) {
                for (String field : List.of("lensModel", "attachment", "count")) {
                    into.put(to + "/" + at + "/" + field, sent.value(from + "/" + row + "/" + field));
                }
                at++;
            }
        }
    }

    static Json json(Form ordered) {
        List<Json> pieces = new ArrayList<>();
        for (int row = 0; row < ordered.rows("/pieces"); row++) {
            pieces.add(piece(ordered, "/pieces/" + row));
        }
        Map<String, String> rest = new LinkedHashMap<>(ordered.values());
        rest.keySet().removeIf(name -> name.startsWith("/pieces/"));
        Json.Members members = Json.object();
        ((Json.Obj) FormJson.read(new Form(rest, List.of(), ""))).members().forEach(members::put);
        return members.put("pieces", Json.list(pieces)).build();
    }

    private static Json piece(Form form, String row) {
        String[] source = form.value(row + "/source").split("/", 3);
        Json.Members members = Json.object();
        Json id = source.length > 1 && PathNumbers.of(source[1]).isPresent()
                ? Json.number(PathNumbers.of(source[1]).getAsLong())
                : Json.nothing();
        switch (source[0]) {
            case "offer" -> members.put("purchaseOffer", id);
            case "card" -> members.put("rateCard", id).put("rate", source.length > 2 ? source[2] : "");
            case "set" -> members.put("lensSet", id);
            default -> members.put("unit", id);
        }
        List<Json> glass = new ArrayList<>();
        for (int at = 0; at < form.rows(row + "/glass"); at++) {
            Map<String, String> values = new LinkedHashMap<>();
            for (String field : List.of("lensModel", "attachment", "count")) {
                values.put("/" + field, form.value(row + "/glass/" + at + "/" + field));
            }
            glass.add(FormJson.read(new Form(values, List.of(), "")));
        }
        return glass.isEmpty()
                ? members.build()
                : members.put("glass", Json.list(glass)).build();
    }

    static Form form(Way way) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("/name", way.name());
        values.put("/note", way.note());
        for (int row = 0; row < way.pieces().size(); row++) {
            Way.Piece piece = way.pieces().get(row);
            String name = "/pieces/" + row;
            values.put(name + "/source", source(piece.source()));
            for (int at = 0; at < piece.glass().size(); at++) {
                Way.Brought brought = piece.glass().get(at);
                String glass = name + "/glass/" + at;
                values.put(glass + "/lensModel", String.valueOf(brought.lens().number()));
                values.put(
                        glass + "/attachment",
                        brought.front()
                                .map(front -> String.valueOf(front.number()))
                                .orElse(""));
                values.put(glass + "/count", String.valueOf(brought.count()));
            }
        }
        return new Form(values, List.of(), "");
    }

    private static String source(Way.Source source) {
        return source.fold(
                bought -> "offer/" + bought.offer().number(),
                rented -> "card/" + rented.card().number() + "/" + rented.rate(),
                own -> "unit/" + own.unit().number(),
                own -> "set/" + own.set().number());
    }
}
