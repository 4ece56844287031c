package dayglass.wire.costing;

import dayglass.base.Percent;
import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Part;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A rental's add-ons in their order; each names what it is a percentage of, so earlier names are kept on the way. */
final class AddOnsReader {
    private static final int MOST_PERCENT = 1000;

    /** What an add-on may be a percentage of: the hire, the trip, earlier add-ons. */
    private final Set<String> bases = new LinkedHashSet<>(List.of(AddOn.HIRE, AddOn.TRIP));

    /** An earlier name is at fault, so that an unknown base may well be meant for it. */
    private boolean basesUnsure;

    private AddOnsReader() {}

    static Reader<List<AddOn>> addOns() {
        return (json, place) -> {
            AddOnsReader reader = new AddOnsReader();
            return Part.list(reader::entry).read(json, place).map(Part::goodValues);
        };
    }

    private Read<Part<String, AddOn>> entry(Json json, Place place) {
        Read<Part<String, AddOn>> part = Fields.object(this::addOn).read(json, place);
        Read<String> name = part.isGood() ? part.get().key() : Read.bad();
        name.found().ifPresentOrElse(bases::add, () -> basesUnsure = true);
        return part;
    }

    private Read<Part<String, AddOn>> addOn(Fields fields) {
        Read<String> name = fields.required("name", this::newName);
        Read<Percent> percent = fields.required("percent", Decimals.percent(0, MOST_PERCENT));
        Read<List<String>> on = fields.required("on", Readers.notEmpty(Readers.distinct(this::base)));
        Read<AddOn> addOn = fields.build(() -> new AddOn(name.get(), percent.get(), Set.copyOf(on.get())));
        return Read.good(new Part<>(fields.place(), name, addOn));
    }

    private Read<String> newName(Json json, Place place) {
        Read<String> name = Readers.name().read(json, place);
        if (name.isGood() && bases.contains(name.get())) {
            return place.fault("is the name of " + (isStep(name.get()) ? "a step of the charge" : "an earlier add-on")
                    + ": choose another");
        }
        return name;
    }

    private Read<String> base(Json json, Place place) {
        Read<String> base = Readers.anyText().read(json, place);
        if (!base.isGood() || bases.contains(base.get()) || basesUnsure) {
            return base;
        }
        return place.fault("must be hire, trip or the name of an earlier add-on");
    }

    private static boolean isStep(String name) {
        return name.equals(AddOn.HIRE) || name.equals(AddOn.TRIP);
    }
}
