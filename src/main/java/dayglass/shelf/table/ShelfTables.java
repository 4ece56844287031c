package dayglass.shelf.table;

import static dayglass.shelf.table.TableField.Form.COVERS;
import static dayglass.shelf.table.TableField.Form.DAY;
import static dayglass.shelf.table.TableField.Form.DECIMAL;
import static dayglass.shelf.table.TableField.Form.LINES;
import static dayglass.shelf.table.TableField.Form.SPANS;
import static dayglass.shelf.table.TableField.Form.TEXT;
import static dayglass.shelf.table.TableField.Form.WHOLE;
import static dayglass.shelf.table.TableField.Form.WORD;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.inventory.Holding;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.shelf.LensModelJson;
import dayglass.shelf.UnitJson;
import dayglass.wire.Json;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables of the shelf and their columns. */
final class ShelfTables {
    private static final String MODEL = "model";
    private static final String MODEL_ID = "modelId";
    private static final String HOLDING = "holding";
    private static final String KIND = "kind";

    private static final List<TableField> OF_MODELS = List.of(
            field("maker", "/maker", TEXT, "manufacturer", "make", "brand"),
            field("name", "/name", TEXT, "model", "model name", "lens"),
            field("kind", "/kind", WORD, "type"),
            field("focal length mm", "/focal", DECIMAL, "focal", "focal length"),
            field("short end mm", "/minFocal", DECIMAL, "min focal"),
            field("long end mm", "/maxFocal", DECIMAL, "max focal"),
            field("t-stop", "/tStop", DECIMAL, "stop", "t", "t stop"),
            field("squeeze", "/squeeze", DECIMAL),
            field("image circle mm", "/imageCircle", DECIMAL, "image circle", "coverage"),
            field("mounts", "/mounts", LINES, "mount"),
            field("close focus m", "/closeFocusM", DECIMAL, "close focus", "minimum focus"),
            field("front mm", "/frontMm", DECIMAL, "front", "front diameter"),
            field("weight g", "/weightG", WHOLE, "weight"),
            field("length mm", "/lengthMm", DECIMAL, "length"),
            field("iris blades", "/irisBlades", WHOLE, "blades"),
            field("focus scale", "/focusScale", WORD, "scale"),
            field("stops to close down", "/closeDownStops", DECIMAL),
            field("light loss stops", "/lightLossStops", DECIMAL, "light loss"),
            field("focusing", "/focusing", WORD, "focus"),
            field("flare", "/look/flare", WHOLE),
            field("out-of-focus shape", "/look/outOfFocusShape", WHOLE),
            field("distortion", "/look/distortion", WHOLE),
            field("edge sharpness", "/look/edgeSharpness", WHOLE),
            field("colour", "/look/colour", WHOLE, "color"),
            field("look in words", "/look/note", TEXT),
            field("look tested on", "/look/testedOn", DAY),
            field("tags", "/tags", LINES),
            field("cautions", "/cautions", LINES, "caution"));

    private static final List<TableField> OF_UNITS = List.of(
            field("tag", "/tag", TEXT, "asset tag", "asset", "barcode", "unit"),
            field("maker", "/model/maker", TEXT, "manufacturer", "make", "brand"),
            field("model", "/model/name", TEXT, "model name", "lens"),
            field("serial", "/serial", TEXT, "serial no", "serial number", "s/n"),
            field("mount fitted", "/mountFitted", TEXT, "mount"),
            field("home shelf", "/homeShelf", TEXT, "shelf", "location", "place"),
            field("origin", "/origin", TEXT, "country of origin", "country"),
            field("accessories", "/accessories", LINES),
            field("serves", "/covers", COVERS, "covers", "slots", "slot"),
            field("available", "/available", SPANS),
            field("value", "/value/amount", DECIMAL, "replacement value", "insured value"),
            field("value currency", "/value/currency", WORD, "currency"),
            field("value set on", "/value/setOn", DAY, "valued on", "value date"),
            field("held", "/holding/kind", WORD, "holding", "ownership"),
            field("bought on", "/holding/boughtOn", DAY, "purchase date", "purchased"),
            field("price", "/holding/price/amount", DECIMAL, "purchase price"),
            field("price currency", "/holding/price/currency", WORD),
            field("order", "/holding/order", TEXT, "order number", "purchase order", "po"),
            field("invoice", "/holding/invoice", TEXT, "invoice number"),
            field("owner", "/holding/owner", TEXT),
            field("agreement", "/holding/agreement", TEXT),
            field("held from", "/holding/from", DAY),
            field("paid up to", "/holding/paidUpTo", DAY),
            field("due back on", "/holding/dueBackOn", DAY, "due back"),
            field("late day", "/holding/lateDay/amount", DECIMAL),
            field("late day currency", "/holding/lateDay/currency", WORD),
            field("consigned until", "/holding/until", DAY),
            field("left on", "/departure/on", DAY),
            field("left how", "/departure/how", WORD),
            field("left for", "/departure/price/amount", DECIMAL),
            field("left for currency", "/departure/price/currency", WORD));

    private ShelfTables() {}

    private static TableField field(String name, String pointer, TableField.Form form, String... alsoCalled) {
        return new TableField(name, pointer, form, List.of(alsoCalled));
    }

    static RecordTable<LensModel.Id, LensModel> models(Shelf shelf) {
        return new RecordTable<>(
                OF_MODELS,
                List.of("maker", "name"),
                shelf.models(),
                cells -> shelf.models().named(cell(cells, "maker"), cell(cells, "name")),
                new RecordTable.Text<>(LensModelJson.reader(), LensModelJson::write));
    }

    static RecordTable<Unit.Id, Unit> units(Shelf shelf) {
        return new RecordTable<>(
                OF_UNITS,
                List.of("tag"),
                shelf.units(),
                cells -> shelf.units().tagged(cell(cells, "tag")),
                new RecordTable.Text<>(unitReader(shelf), unit -> withModelNamed(shelf, unit)));
    }

    private static String cell(Map<String, String> cells, String name) {
        return cells.getOrDefault(name, "");
    }

    /** A row names the model; the record has its id. */
    private static Json.Obj withModelNamed(Shelf shelf, Unit unit) {
        Json.Members members = Json.object();
        UnitJson.write(unit).members().forEach((name, value) -> {
            if (!name.equals(MODEL_ID)) {
                members.put(name, value);
            }
        });
        unit.model()
                .flatMap(shelf.models()::find)
                .map(Stored::facts)
                .ifPresent(model -> members.put(
                        MODEL,
                        Json.object()
                                .put("maker", model.maker())
                                .put("name", model.name())
                                .build()));
        return members.build();
    }

    private static Reader<Unit> unitReader(Shelf shelf) {
        return (json, place) -> {
            Json.Members members = Json.object();
            Json.Obj row = (Json.Obj) json;
            row.members().forEach((name, value) -> {
                if (name.equals(HOLDING) && value instanceof Json.Obj holding) {
                    members.put(name, withKind(holding));
                } else if (!name.equals(MODEL)) {
                    members.put(name, value);
                }
            });
            if (row.members().get(MODEL) instanceof Json.Obj named) {
                Read<LensModel.Id> id = model(shelf, named, place.member(MODEL));
                id.found().ifPresent(found -> members.put(MODEL_ID, found.number()));
            }
            return UnitJson.reader().read(members.build(), place);
        };
    }

    /** A row with a price and no word of who holds the unit is of the house's own. */
    private static Json withKind(Json.Obj holding) {
        if (holding.members().containsKey(KIND)) {
            return holding;
        }
        Json.Members members = Json.object().put(KIND, Holding.Owned.UNRECORDED.word());
        holding.members().forEach(members::put);
        return members.build();
    }

    private static Read<LensModel.Id> model(Shelf shelf, Json.Obj named, Place place) {
        if (!(named.members().get("maker") instanceof Json.Text maker)) {
            return place.member("maker").fault("is missing: a model is named by its maker and its name");
        }
        if (!(named.members().get("name") instanceof Json.Text name)) {
            return place.member("name").fault("is missing: a model is named by its maker and its name");
        }
        Optional<Stored<LensModel.Id, LensModel>> found = shelf.models().named(maker.value(), name.value());
        return found.map(model -> Read.good(model.id()))
                .orElseGet(() -> place.member("name")
                        .fault("there is no model " + maker.value() + " " + name.value()
                                + ": bring in the models first, or check the spelling"));
    }
}
