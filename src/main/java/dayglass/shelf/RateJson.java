package dayglass.shelf;

import dayglass.base.Currency;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.catalogue.Supplier;
import dayglass.cost.rental.RentalTerms.AddOn;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.RentalReader;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A line of a rate card: a rental option of a costing without its supplier, with what it is for and what its add-ons
 * are, as in {@code "lets": {"model": 3}, "marks": {"damage waiver": "waiver"}}.
 */
public final class RateJson {
    private static final Supplier LEFT_OUT = new Supplier("left out");
    private static final Map<String, Mark> MARKS = Arrays.stream(Mark.values())
            .collect(Collectors.toMap(Mark::word, mark -> mark, (one, other) -> one, LinkedHashMap::new));

    private RateJson() {}

    private record Own(Read<Optional<Lets>> lets, Read<Map<String, Mark>> marks) {
        /** Something whose name is at fault is still something, so that nothing is said of slots. */
        boolean isForNothing() {
            return lets.isGood() && lets.get().isEmpty();
        }
    }

    public static Reader<Rate> reader(Currency currency) {
        Reader<Rate> rate = RentalReader.rate(
                currency,
                RateJson::own,
                Own::isForNothing,
                (rental, own) -> Rate.of(rental, own.lets().get(), own.marks().get()));
        return (json, place) -> {
            Read<Rate> read = rate.read(json, place);
            Optional<String> stray = read.found().flatMap(RateJson::strayMark);
            return stray.isPresent()
                    ? place.member("marks").member(stray.get()).fault("names no add-on of this rate")
                    : read;
        };
    }

    private static Optional<String> strayMark(Rate rate) {
        List<String> addOns = rate.terms().addOns().stream().map(AddOn::name).toList();
        return rate.marks().keySet().stream()
                .filter(name -> !addOns.contains(name))
                .findFirst();
    }

    private static Own own(Fields fields) {
        return new Own(
                fields.optional("lets", Fields.object(RateJson::lets)),
                fields.optional("marks", Readers.words(Readers.word(MARKS)), Map.of()));
    }

    private static Read<Lets> lets(Fields fields) {
        List<String> kinds =
                Arrays.stream(Lets.Kind.values()).map(Lets.Kind::word).toList();
        List<String> given = kinds.stream().filter(fields::has).toList();
        if (given.size() != 1) {
            return fields.place().fault("names one thing: give model, set or unit", "choose one thing");
        }
        Read<Long> number =
                fields.required(given.get(0), Ids.id(LensModel.Id::new).map(LensModel.Id::number));
        return fields.build(() -> new Lets(Lets.Kind.of(given.get(0)).orElseThrow(), number.get()));
    }

    public static Json write(Rate rate) {
        return OptionWriter.rate(rate.from(LEFT_OUT), members -> {
            rate.lets()
                    .ifPresent(lets -> members.put(
                            "lets",
                            Json.object().put(lets.kind().word(), lets.number()).build()));
            if (!rate.marks().isEmpty()) {
                Json.Members marks = Json.object();
                new TreeMap<>(rate.marks()).forEach((addOn, mark) -> marks.put(addOn, mark.word()));
                members.put("marks", marks.build());
            }
        });
    }
}
