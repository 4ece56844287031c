package dayglass.shelf;

import dayglass.base.DateRange;
import dayglass.base.Money;
import dayglass.catalogue.LensModel;
import dayglass.inventory.Holding;
import dayglass.inventory.Unit;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.CoversReader;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.SpanReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A unit's facts; what is left out is not known, a holding that is left out is the house's own. */
public final class UnitJson {
    private static final List<String> WAYS_TO_LEAVE = List.of("sold", "given back", "lost", "scrapped");

    private UnitJson() {}

    public static Reader<Unit> reader() {
        return Fields.object(UnitJson::read);
    }

    private static Read<Unit> read(Fields fields) {
        Read<String> tag = fields.required("tag", Readers.name());
        Read<Optional<LensModel.Id>> model = fields.optional("modelId", Ids.id(LensModel.Id::new));
        Read<Optional<String>> serial = fields.optional("serial", Readers.name());
        Read<Holding> holding = fields.optional("holding", HoldingJson.reader(), Holding.Owned.UNRECORDED);
        Read<Optional<Unit.Value>> value = fields.optional("value", value());
        Read<Unit.Papers> papers = papers(fields);
        Read<List<String>> accessories = fields.optional("accessories", Readers.distinct(Readers.name()), List.of());
        Read<Unit.Use> use = use(fields);
        Read<Optional<Unit.Departure>> departure = fields.optional("departure", departure());
        return fields.build(() -> new Unit(
                tag.get(),
                model.get(),
                serial.get(),
                holding.get(),
                value.get(),
                papers.get(),
                accessories.get(),
                use.get(),
                departure.get()));
    }

    private static Reader<Unit.Value> value() {
        return Fields.object(fields -> {
            Read<Money> amount = MoneyJson.money(fields);
            Read<LocalDate> setOn = fields.required("setOn", Readers.date());
            return fields.build(() -> new Unit.Value(amount.get(), setOn.get()));
        });
    }

    private static Read<Unit.Papers> papers(Fields fields) {
        Read<Optional<String>> origin = fields.optional("origin", Readers.name());
        Read<Optional<String>> mount = fields.optional("mountFitted", Readers.name());
        Read<Optional<String>> shelf = fields.optional("homeShelf", Readers.name());
        boolean good = origin.isGood() && mount.isGood() && shelf.isGood();
        return good ? Read.good(new Unit.Papers(origin.get(), mount.get(), shelf.get())) : Read.bad();
    }

    private static Read<Unit.Use> use(Fields fields) {
        Read<Map<String, Integer>> covers = fields.optional("covers", CoversReader.covers(), Map.of());
        Read<List<DateRange>> available = fields.optional("available", SpanReader.spans(), List.of());
        return covers.isGood() && available.isGood()
                ? Read.good(new Unit.Use(covers.get(), available.get()))
                : Read.bad();
    }

    private static Reader<Unit.Departure> departure() {
        return Fields.object(fields -> {
            Read<LocalDate> on = fields.required("on", Readers.date());
            Read<String> how = fields.required("how", Readers.oneOf(WAYS_TO_LEAVE));
            Read<Optional<Money>> price = fields.optional("price", MoneyJson.money());
            return fields.build(() -> new Unit.Departure(on.get(), how.get(), price.get()));
        });
    }

    public static void write(Json.Members members, Unit unit) {
        members.put("tag", unit.tag());
        unit.model().ifPresent(id -> members.put("modelId", id.number()));
        unit.serial().ifPresent(serial -> members.put("serial", serial));
        if (!unit.holding().equals(Holding.Owned.UNRECORDED)) {
            members.put("holding", HoldingJson.write(unit.holding()));
        }
        unit.value()
                .ifPresent(value -> members.put(
                        "value",
                        MoneyJson.put(Json.object(), value.amount())
                                .put("setOn", value.setOn().toString())
                                .build()));
        unit.papers().origin().ifPresent(origin -> members.put("origin", origin));
        unit.papers().mountFitted().ifPresent(mount -> members.put("mountFitted", mount));
        unit.papers().homeShelf().ifPresent(shelf -> members.put("homeShelf", shelf));
        if (!unit.accessories().isEmpty()) {
            members.put("accessories", Json.texts(unit.accessories()));
        }
        if (!unit.use().covers().isEmpty()) {
            members.put("covers", OptionWriter.covers(unit.use().covers()));
        }
        members.putUnlessEmpty("available", OptionWriter.spans(unit.use().available()));
        unit.departure().ifPresent(gone -> members.put("departure", departure(gone)));
    }

    private static Json departure(Unit.Departure gone) {
        Json.Members members = Json.object().put("on", gone.on().toString()).put("how", gone.how());
        gone.price().ifPresent(price -> members.put("price", MoneyJson.write(price)));
        return members.build();
    }

    public static Json.Obj write(Unit unit) {
        Json.Members members = Json.object();
        write(members, unit);
        return members.build();
    }
}
