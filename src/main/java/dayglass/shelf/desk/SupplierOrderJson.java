package dayglass.shelf.desk;

import dayglass.desk.rental.SupplierOrder;
import dayglass.desk.rental.SupplierOrder.Noted;
import dayglass.house.Person;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.time.Instant;
import java.util.Optional;

/** The order of a line that is rented in, as it is kept with its rental. */
final class SupplierOrderJson {
    private SupplierOrderJson() {}

    static Reader<SupplierOrder> reader() {
        return Fields.object(fields -> {
            Read<Integer> line = fields.required("line", Readers.whole(0, Integer.MAX_VALUE));
            Read<String> number = fields.required("number", Readers.anyText());
            Read<String> words = fields.optional("words", Readers.anyText(), "");
            Read<Noted> ordered = fields.required("ordered", noted());
            Read<Optional<Noted>> got = fields.optional("got", noted());
            return fields.build(
                    () -> new SupplierOrder(line.get(), number.get(), words.get(), ordered.get(), got.get()));
        });
    }

    private static Reader<Noted> noted() {
        return Fields.object(fields -> {
            Read<Person.Id> by = fields.required("by", Ids.id(Person.Id::new));
            Read<Instant> at = fields.required("at", RentalJson.instant());
            return fields.build(() -> new Noted(by.get(), at.get()));
        });
    }

    static Json write(SupplierOrder order) {
        Json.Members members = Json.object().put("line", order.line()).put("number", order.number());
        if (!order.words().isEmpty()) {
            members.put("words", order.words());
        }
        members.put("ordered", write(order.ordered()));
        order.got().ifPresent(got -> members.put("got", write(got)));
        return members.build();
    }

    private static Json write(Noted noted) {
        return Json.object()
                .put("by", noted.by().number())
                .put("at", noted.at().toString())
                .build();
    }
}
