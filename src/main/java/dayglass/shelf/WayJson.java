package dayglass.shelf;

import dayglass.catalogue.LensModel;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.RateCard;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.wire.Fields;
import dayglass.wire.Ids;
import dayglass.wire.Json;
import dayglass.wire.Part;
import dayglass.wire.Place;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A way of getting a job's picture; each piece names its source by one member. */
public final class WayJson {
    private static final int LONGEST_NOTE = 2_000;
    private static final int MOST_PIECES = 60;
    private static final int MOST_GLASS = 64;
    private static final int MOST_ALIKE = 100;
    private static final List<String> SOURCES = List.of("purchaseOffer", "rateCard", "unit", "lensSet");

    private WayJson() {}

    /** A way that names its job itself. */
    public static Reader<Way> reader() {
        return Fields.object(fields -> {
            Read<Job.Id> job = fields.required("jobId", Ids.id(Job.Id::new));
            return read(fields, job);
        });
    }

    /** A way of this job. */
    public static Reader<Way> reader(Job.Id job) {
        return Fields.object(fields -> read(fields, Read.good(job)));
    }

    private static Read<Way> read(Fields fields, Read<Job.Id> job) {
        Read<String> name = fields.required("name", Readers.name());
        Read<String> note = fields.optional("note", Readers.text(LONGEST_NOTE), "");
        Read<List<Way.Piece>> pieces =
                fields.required("pieces", atMost(MOST_PIECES, "pieces", Readers.notEmpty(pieces())));
        return fields.build(() -> new Way(job.get(), name.get(), note.get(), pieces.get()));
    }

    private static <T> Reader<T> atMost(int most, String what, Reader<T> reader) {
        return (json, place) -> json instanceof Json.Arr list && list.entries().size() > most
                ? place.fault("has more than " + most + " " + what + ": leave some out")
                : reader.read(json, place);
    }

    private static Reader<List<Way.Piece>> pieces() {
        Reader<Way.Piece> piece = Fields.object(WayJson::piece);
        return (json, place) -> {
            Reader<Part<Way.Source, Way.Piece>> part = (each, at) -> {
                Read<Way.Piece> read = piece.read(each, at);
                return Read.good(new Part<>(at, read.map(Way.Piece::source), read));
            };
            Read<List<Part<Way.Source, Way.Piece>>> parts = Part.list(part).read(json, place);
            parts.found()
                    .ifPresent(list -> Part.requireDistinct(list, Part::place, "comes from a source named already"));
            return parts.map(Part::goodValues);
        };
    }

    private static Read<Way.Piece> piece(Fields fields) {
        Read<Optional<PurchaseOffer.Id>> offer = fields.optional("purchaseOffer", Ids.id(PurchaseOffer.Id::new));
        Read<Optional<RateCard.Id>> card = fields.optional("rateCard", Ids.id(RateCard.Id::new));
        Read<Optional<String>> rate = fields.optional("rate", Readers.name());
        Read<Optional<Unit.Id>> unit = fields.optional("unit", Ids.id(Unit.Id::new));
        Read<Optional<LensSet.Id>> set = fields.optional("lensSet", Ids.id(LensSet.Id::new));
        Read<List<Way.Brought>> glass = fields.optional(
                "glass",
                atMost(MOST_GLASS, "kinds of glass", Readers.list(Fields.object(WayJson::brought))),
                List.of());
        Place place = fields.place();
        if (SOURCES.stream().filter(fields::has).count() != 1) {
            return place.fault(
                    "comes from one source: give purchaseOffer, rateCard with rate, unit or lensSet",
                    "choose a source");
        }
        if (fields.has("rateCard") != fields.has("rate")) {
            return place.member(fields.has("rate") ? "rateCard" : "rate")
                    .fault("is missing: a rate is named by its card and its code");
        }
        return fields.build(() -> new Way.Piece(
                Stream.of(
                                offer.get().<Way.Source>map(Way.Bought::new),
                                card.get()
                                        .<Way.Source>map(id ->
                                                new Way.Rented(id, rate.get().orElseThrow())),
                                unit.get().<Way.Source>map(Way.OwnUnit::new),
                                set.get().<Way.Source>map(Way.OwnSet::new))
                        .flatMap(Optional::stream)
                        .findFirst()
                        .orElseThrow(),
                glass.get()));
    }

    private static Read<Way.Brought> brought(Fields fields) {
        Read<LensModel.Id> lens = fields.required("lensModel", Ids.id(LensModel.Id::new));
        Read<Optional<LensModel.Id>> front = fields.optional("attachment", Ids.id(LensModel.Id::new));
        Read<Integer> count = fields.optional("count", Readers.whole(1, MOST_ALIKE), 1);
        return fields.build(() -> new Way.Brought(lens.get(), front.get(), count.get()));
    }

    /** All of it. */
    public static void write(Json.Members members, Way way) {
        members.put("jobId", way.job().number());
        writeFacts(members, way);
    }

    /** All but its job. */
    public static Json.Obj writeFacts(Way way) {
        Json.Members members = Json.object();
        writeFacts(members, way);
        return members.build();
    }

    private static void writeFacts(Json.Members members, Way way) {
        members.put("name", way.name());
        if (!way.note().isEmpty()) {
            members.put("note", way.note());
        }
        members.put(
                "pieces", Json.list(way.pieces().stream().map(WayJson::write).toList()));
    }

    private static Json write(Way.Piece piece) {
        Json.Members members = Json.object();
        piece.source()
                .<Json.Members>fold(
                        bought -> members.put("purchaseOffer", bought.offer().number()),
                        rented ->
                                members.put("rateCard", rented.card().number()).put("rate", rented.rate()),
                        own -> members.put("unit", own.unit().number()),
                        own -> members.put("lensSet", own.set().number()));
        if (!piece.glass().isEmpty()) {
            members.put(
                    "glass",
                    Json.list(piece.glass().stream().map(WayJson::write).toList()));
        }
        return members.build();
    }

    private static Json write(Way.Brought brought) {
        Json.Members members = Json.object().put("lensModel", brought.lens().number());
        brought.front().ifPresent(front -> members.put("attachment", front.number()));
        return members.put("count", brought.count()).build();
    }
}
