package dayglass.planning.ways;

import dayglass.base.Id;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.base.VersionedCollection;
import dayglass.catalogue.LensModel;
import dayglass.catalogue.LensModels;
import dayglass.catalogue.PurchaseOffer;
import dayglass.catalogue.Rate;
import dayglass.catalogue.RateCard;
import dayglass.inventory.LensSet;
import dayglass.inventory.Unit;
import dayglass.job.Job;
import dayglass.job.Way;
import dayglass.planning.OptionSources;
import dayglass.planning.SupplierOptions;
import dayglass.planning.glass.JudgedGlass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Looks up what the ways of one sheet name: the ids of their options in a costing, their glass, and the job that considers
 * them too. Each piece is looked up once; the threads of the sheet share it.
 */
final class WayParts {
    private final OptionSources options;
    private final LensModels models;
    private final SupplierOptions offered;
    private final Map<LensModel.Id, Outcome<LensModel>> lenses = new ConcurrentHashMap<>();
    private final Map<Way.Piece, Outcome<Named>> lookedUp = new ConcurrentHashMap<>();

    /** @param offered to the sheet's job */
    WayParts(OptionSources options, LensModels models, SupplierOptions offered) {
        this.options = options;
        this.models = models;
        this.offered = offered;
    }

    SupplierOptions offered() {
        return offered;
    }

    /**
     * A piece with its option's id.
     *
     * @param glass empty where nothing is known of it
     */
    record Named(String option, Way.Source source, List<JudgedGlass.Models> glass) {}

    /** The pieces of a way; refused where something that it names is not there any more. */
    Outcome<List<Named>> of(Way way) {
        List<Named> named = new ArrayList<>();
        for (Way.Piece piece : way.pieces()) {
            Outcome<Named> each = of(piece);
            Optional<Problem> problem = each.fold(
                    good -> {
                        named.add(good);
                        return Optional.empty();
                    },
                    Optional::of);
            if (problem.isPresent()) {
                return Outcome.refused(problem.get());
            }
        }
        return Outcome.done(named);
    }

    /**
     * The glass that options are known to bring, by id: what the shelf knows of the job's own units and sets, then what
     * the first way says that names it.
     */
    Map<String, List<JudgedGlass.Models>> known(Job job, List<Stored<Way.Id, Way>> ways) {
        Map<String, List<JudgedGlass.Models>> known = new LinkedHashMap<>();
        Stream.concat(
                        job.sources().units().stream().map(Way.OwnUnit::new),
                        job.sources().lensSets().stream().map(Way.OwnSet::new))
                .map(source -> new Way.Piece(source, List.of()))
                .forEach(piece -> of(piece).map(named -> putIfKnown(known, named)));
        ways.forEach(way -> of(way.facts()).map(pieces -> {
            pieces.forEach(piece -> putIfKnown(known, piece));
            return pieces;
        }));
        return known;
    }

    private static Named putIfKnown(Map<String, List<JudgedGlass.Models>> known, Named piece) {
        if (!piece.glass().isEmpty()) {
            known.putIfAbsent(piece.option(), piece.glass());
        }
        return piece;
    }

    private Outcome<Named> of(Way.Piece piece) {
        return lookedUp.computeIfAbsent(piece, this::named);
    }

    private Outcome<Named> named(Way.Piece piece) {
        return option(piece.source())
                .then(option -> glass(piece).map(glass -> new Named(option, piece.source(), glass)));
    }

    private Outcome<String> option(Way.Source source) {
        return source.fold(
                bought -> there(options.purchaseOffers(), bought.offer(), "purchase offer")
                        .map(offer -> offer.offer().code()),
                rented -> offered.has(rented.card()) ? Outcome.done(rented.rate()) : gone(rented.card(), "rate card"),
                own -> there(options.units(), own.unit(), "unit").map(Unit::tag),
                own -> there(options.lensSets(), own.set(), "set").map(LensSet::name));
    }

    private Outcome<List<JudgedGlass.Models>> glass(Way.Piece piece) {
        if (piece.glass().isEmpty()) {
            return known(piece.source());
        }
        Outcome<List<JudgedGlass.Models>> all = Outcome.done(List.of());
        for (Way.Brought brought : piece.glass()) {
            all = all.then(before -> models(brought)
                    .map(more -> Stream.concat(before.stream(), Stream.of(more)).toList()));
        }
        return all;
    }

    private Outcome<JudgedGlass.Models> models(Way.Brought brought) {
        return lens(brought.lens())
                .then(model -> brought.front()
                        .map(front -> lens(front)
                                .map(each -> new JudgedGlass.Models(model, Optional.of(each), brought.count())))
                        .orElseGet(
                                () -> Outcome.done(new JudgedGlass.Models(model, Optional.empty(), brought.count()))));
    }

    private Outcome<LensModel> lens(LensModel.Id id) {
        return lenses.computeIfAbsent(id, each -> there(models, each, "lens model"));
    }

    /** What the shelf knows itself: the models of a unit or of a set's members. */
    private Outcome<List<JudgedGlass.Models>> known(Way.Source source) {
        return Outcome.done(source.<Stream<Unit.Id>>fold(
                        bought -> Stream.empty(),
                        rented -> Stream.empty(),
                        own -> Stream.of(own.unit()),
                        own -> options.lensSets().find(own.set()).stream()
                                .flatMap(set -> set.facts().members().stream()))
                .flatMap(id -> options.units().find(id).stream())
                .flatMap(unit -> unit.facts().model().stream())
                .flatMap(id -> models.find(id).stream())
                .map(model -> new JudgedGlass.Models(model.facts(), Optional.empty(), 1))
                .toList());
    }

    private static <I extends Id, T> Outcome<T> there(VersionedCollection<I, T> all, I id, String noun) {
        return all.find(id).map(stored -> Outcome.done(stored.facts())).orElseGet(() -> gone(id, noun));
    }

    private static <T> Outcome<T> gone(Id id, String noun) {
        return Outcome.refused(
                Problem.Code.NOT_FOUND,
                "The " + noun + " " + id.number() + " that this way names is not there any more.");
    }

    /**
     * The job with the sources of a way beside its own. Of a card that only the way names, only its rates are considered.
     *
     * @param own ids of the options that the job considers itself
     */
    Job considering(Job job, List<Named> pieces, Set<String> own) {
        Set<RateCard.Id> cards = new LinkedHashSet<>(job.sources().rateCards());
        Set<PurchaseOffer.Id> offers = new LinkedHashSet<>(job.sources().purchaseOffers());
        Set<Unit.Id> units = new LinkedHashSet<>(job.sources().units());
        Set<LensSet.Id> sets = new LinkedHashSet<>(job.sources().lensSets());
        Set<String> leftOut = new LinkedHashSet<>(job.sources().leftOut());
        for (Named piece : pieces) {
            piece.source()
                    .fold(
                            bought -> offers.add(bought.offer()),
                            rented -> cards.add(rented.card()),
                            unit -> units.add(unit.unit()),
                            set -> sets.add(set.set()));
        }
        for (RateCard.Id card : cards) {
            if (!job.sources().rateCards().contains(card)) {
                rates(card).stream()
                        .map(Rate::code)
                        .filter(code -> !own.contains(code))
                        .forEach(leftOut::add);
            }
        }
        pieces.forEach(piece -> leftOut.remove(piece.option()));
        return job.considering(new Job.Sources(
                List.copyOf(cards), List.copyOf(offers), List.copyOf(units), List.copyOf(sets), List.copyOf(leftOut)));
    }

    private List<Rate> rates(RateCard.Id card) {
        return offered.card(card).fold(inForce -> inForce.card().rates(), none -> List.of());
    }
}
