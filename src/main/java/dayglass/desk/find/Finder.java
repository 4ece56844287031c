package dayglass.desk.find;

import dayglass.base.Stored;
import dayglass.catalogue.LensModel;
import dayglass.desk.price.Wish;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import dayglass.optics.Formats;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Looks for what can be asked for by the words that a clerk types: every word must be part of its name. A tag or serial
 * in full comes first, as a scanner types it; then sets, models, "any" of a focal length, and units.
 */
public final class Finder {
    /** The longest text that is looked for. */
    public static final int LONGEST = 200;

    private static final int MOST_SETS = 4;
    private static final int MOST_MODELS = 6;
    private static final int MOST_UNITS = 5;
    private static final Pattern FOCAL = Pattern.compile("(?:^|\\s)(\\d{1,4}(?:\\.\\d{1,2})?)\\s*(?:mm)?(?=\\s|$)");
    private static final List<String> FILLERS = List.of("any", "a", "an", "the", "that", "covers", "mm");

    private final Shelf shelf;
    private final Whereabouts whereabouts;

    public Finder(Shelf shelf, Whereabouts whereabouts) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
    }

    /**
     * Finds.
     *
     * @param stay when it is wanted, so that it is said what is free then
     * @return the likeliest first; none for blank text
     */
    public List<Find> find(String text, Optional<Stay> stay) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        List<String> words = Stream.of(plain.split("\\s+", -1))
                .filter(word -> !word.isEmpty() && !FILLERS.contains(word))
                .toList();
        if (plain.isEmpty() || plain.length() > LONGEST) {
            return List.of();
        }
        List<Stored<LensModel.Id, LensModel>> models = shelf.models().list(Optional.empty(), Integer.MAX_VALUE);
        Map<LensModel.Id, String> names = new HashMap<>();
        models.forEach(model -> names.put(model.id(), model.facts().fullName()));
        FreeThen free = new FreeThen(whereabouts.availability(), stay);
        List<Find> exact = new ArrayList<>();
        List<Find> units = new ArrayList<>();
        for (Stored<Unit.Id, Unit> unit : words.isEmpty() ? List.<Stored<Unit.Id, Unit>>of() : matching(words)) {
            (isNamed(unit.facts(), plain) ? exact : units).add(unit(unit, names, free));
        }
        List<Find> found = new ArrayList<>(exact);
        if (!words.isEmpty()) {
            shelf.sets().matching(words, MOST_SETS).forEach(set -> found.add(set(set, free)));
        }
        models.stream()
                .filter(model -> !words.isEmpty() && answers(model.facts(), words))
                .limit(MOST_MODELS)
                .forEach(model -> found.add(model(model, free)));
        found.addAll(any(plain, models));
        found.addAll(units);
        return found;
    }

    private List<Stored<Unit.Id, Unit>> matching(List<String> words) {
        return shelf.units().matching(words, MOST_UNITS);
    }

    private static boolean isNamed(Unit unit, String plain) {
        return unit.tag().equalsIgnoreCase(plain)
                || unit.serial().filter(plain::equalsIgnoreCase).isPresent();
    }

    private static boolean answers(LensModel model, List<String> words) {
        String known = (model.fullName() + " " + model.kind().word() + " "
                        + model.record()
                                .focalMm()
                                .map(BigDecimal::toPlainString)
                                .orElse("") + "mm")
                .toLowerCase(Locale.ROOT);
        return words.stream().allMatch(known::contains);
    }

    private Find unit(Stored<Unit.Id, Unit> unit, Map<LensModel.Id, String> names, FreeThen free) {
        String serial =
                unit.facts().serial().map(number -> ", serial " + number).orElse("");
        String model =
                unit.facts().model().map(id -> names.getOrDefault(id, "")).orElse("a unit of no model");
        return new Find(
                new Wish.OfUnit(unit.id()), unit.facts().tag(), model + serial, free.ofUnit(unit.id(), unit.facts()));
    }

    private Find set(Stored<LensSet.Id, LensSet> set, FreeThen free) {
        int members = set.facts().members().size();
        String facts = (set.facts().matched() ? "a matched set of " : "a set of ") + members;
        return new Find(
                new Wish.OfSet(set.id()),
                set.facts().name(),
                facts,
                free.ofSet(
                        set.facts(),
                        member -> shelf.units().find(member).orElseThrow().facts()));
    }

    private static Find model(Stored<LensModel.Id, LensModel> model, FreeThen free) {
        return new Find(
                new Wish.OfModel(model.id()),
                model.facts().fullName(),
                model.facts().kind().word(),
                free.ofModel(model.id()));
    }

    /**
     * "Any 40 mm", where lenses of several models reach it; and any that covers a published format, where some do and
     * some do not.
     */
    private static List<Find> any(String plain, List<Stored<LensModel.Id, LensModel>> models) {
        Matcher focal = FOCAL.matcher(plain);
        if (!focal.find()) {
            return List.of();
        }
        BigDecimal mm = new BigDecimal(focal.group(1));
        List<Find> found = new ArrayList<>();
        long reach = fitting(new Wish.Any(mm, Optional.empty()), models);
        if (reach > 0 && mm.signum() > 0) {
            String name = "any " + mm.toPlainString() + " mm";
            found.add(new Find(new Wish.Any(mm, Optional.empty()), name, modelsOf(reach), Optional.empty()));
            for (Formats.Format format : Formats.FORMATS) {
                BigDecimal circle = diagonal(format);
                Wish.Any covering = new Wish.Any(mm, Optional.of(circle));
                long cover = fitting(covering, models);
                if (cover > 0 && cover < reach) {
                    found.add(new Find(
                            covering,
                            name + " that covers " + format.name(),
                            "an image circle of " + circle.toPlainString() + " mm; " + modelsOf(cover),
                            Optional.empty()));
                }
            }
        }
        return found;
    }

    private static String modelsOf(long count) {
        return count == 1 ? "one model" : count + " models";
    }

    private static long fitting(Wish.Any any, List<Stored<LensModel.Id, LensModel>> models) {
        return models.stream().filter(model -> any.fits(model.facts())).count();
    }

    /** Rounded up to the tenth of a millimetre, so that what has it covers the format. */
    private static BigDecimal diagonal(Formats.Format format) {
        double exact =
                Math.hypot(format.widthMm().doubleValue(), format.heightMm().doubleValue());
        return BigDecimal.valueOf(exact).setScale(1, RoundingMode.CEILING);
    }
}
