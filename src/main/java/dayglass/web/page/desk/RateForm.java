package dayglass.web.page.desk;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.shelf.RateJson;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.Listener;
import java.util.List;

/**
 * A rate as a form. Two things stand in it otherwise than in JSON: what the rate is for is one field, such as
 * {@code model/3}, and what an add-on is stands in the add-on's own row.
 */
final class RateForm {
    private static final String LETS = "lets";
    private static final String MARKS = "marks";
    private static final String MARK = "mark";
    private static final String ADD_ONS = "addOns";

    private RateForm() {}

    static Form of(Rate rate) {
        Json.Members members = Json.object();
        ((Json.Obj) RateJson.write(rate)).members().forEach((name, value) -> {
            if (!name.equals(LETS) && !name.equals(MARKS)) {
                members.put(name, value);
            }
        });
        Form form = FormJson.form(members.build());
        if (rate.lets().isPresent()) {
            form = form.with("/" + LETS, value(rate.lets().get()));
        }
        List<AddOn> addOns = rate.terms().addOns();
        for (int at = 0; at < addOns.size(); at++) {
            Mark mark = rate.mark(addOns.get(at).name());
            form = form.with(row(at), mark == Mark.CHARGE ? "" : mark.word());
        }
        return form;
    }

    /** What is chosen for a thing: {@code set/2}. */
    static String value(Lets lets) {
        return lets.kind().word() + "/" + lets.number();
    }

    /** The rate that a compact form stands for, with faults at the names of its fields. */
    static Checked<Rate> read(Form compact, Currency currency) {
        Json.Members members = Json.object();
        Json.Members marks = Json.object();
        ((Json.Obj) FormJson.read(compact)).members().forEach((name, value) -> {
            if (name.equals(LETS)) {
                members.put(LETS, lets(compact.value("/" + LETS)));
            } else if (name.equals(ADD_ONS) && value instanceof Json.Arr rows) {
                members.put(
                        ADD_ONS,
                        Json.list(rows.entries().stream()
                                .map(row -> unmarked(row, marks))
                                .toList()));
            } else {
                members.put(name, value);
            }
        });
        Json.Obj marked = marks.build();
        if (!marked.members().isEmpty()) {
            members.put(MARKS, marked);
        }
        return RateJson.reader(currency)
                .readAt("", members.build(), Listener.PERSON)
                .fold(Checked.Good::new, faults -> placed(faults, compact));
    }

    private static Json lets(String chosen) {
        String[] parts = chosen.strip().split("/", 2);
        return parts.length == 2 && parts[1].matches("[1-9][0-9]{0,17}")
                ? Json.object().put(parts[0], new Json.Num(parts[1])).build()
                : Json.object().build();
    }

    /** The add-on without its mark, which is put beside it by the add-on's name. */
    private static Json unmarked(Json row, Json.Members marks) {
        Json.Members members = Json.object();
        Json.Obj object = (Json.Obj) row;
        object.members().forEach((name, value) -> {
            if (!name.equals(MARK)) {
                members.put(name, value);
            } else if (object.members().get("name") instanceof Json.Text addOn) {
                marks.put(addOn.value(), value);
            }
        });
        return members.build();
    }

    /** A fault of a mark stands at the row of its add-on. */
    private static Checked<Rate> placed(List<Fault> faults, Form form) {
        return new Checked.Faulty<>(faults.stream()
                .map(fault -> fault.pointer().startsWith("/" + MARKS + "/")
                        ? new Fault(rowNamed(fault.pointer().substring(MARKS.length() + 2), form), fault.message())
                        : fault)
                .toList());
    }

    private static String rowNamed(String step, Form form) {
        String addOn = step.replace("~1", "/").replace("~0", "~");
        for (int at = 0; at < form.rows("/" + ADD_ONS); at++) {
            if (form.value("/" + ADD_ONS + "/" + at + "/name").strip().equals(addOn)) {
                return row(at);
            }
        }
        return "/" + ADD_ONS;
    }

    private static String row(int at) {
        return "/" + ADD_ONS + "/" + at + "/" + MARK;
    }
}
