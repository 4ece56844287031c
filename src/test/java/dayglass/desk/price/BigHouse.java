package dayglass.desk.price;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Outcome;
import dayglass.base.Percent;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.cost.rental.RentalTerms;
import dayglass.storage.Database;
import dayglass.storage.FactsJson;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.jooq.DSLContext;

/**
 * An invented house of 5,000 units: families of six models that go as sets, 250 models and 300 sets in all, 20 bookings
 * a unit over three and a half years, a card with a rate for each model and set, and five suppliers' cards with a rate
 * for each model, each of which succeeded an older one.
 */
final class BigHouse {
    static final int FAMILIES = 41;

    private static final int MODELS = 250;
    private static final int IN_FAMILY = 6;
    private static final int SETS = 300;
    private static final int UNITS = 5_000;
    private static final int BOOKINGS = 20;
    private static final int SUPPLIERS = 5;
    private static final long DAY = 86_400L;
    private static final Currency EUR = Currency.of("EUR");

    private final DSLContext sql;
    private final LocalDate today;
    private final Random random = new Random(5);

    private BigHouse(DSLContext sql, LocalDate today) {
        this.sql = sql;
        this.today = today;
    }

    /** The id of a model of a family. */
    static int model(int family, int place) {
        return 1 + family * IN_FAMILY + place;
    }

    /** @param file a database that was made and is empty */
    static void fill(Path file, LocalDate today) {
        try (Database database = Database.open(file)) {
            Outcome<Integer> filled = database.writing(sql -> {
                BigHouse house = new BigHouse(sql, today);
                house.models();
                house.units();
                house.sets();
                house.cards();
                return Outcome.done(UNITS);
            });
            filled.fold(done -> done, problem -> {
                throw new IllegalStateException(problem.detail());
            });
        }
    }

    private void models() {
        for (int model = 1; model <= MODELS; model++) {
            sql.execute(
                    "INSERT INTO lens_model (version, maker, name, kind, record_json) VALUES (1, 'Maker', ?,"
                            + " 'spherical prime', ?)",
                    "model " + model,
                    "{\"maker\": \"Maker\", \"name\": \"model " + model + "\", \"kind\": \"spherical prime\","
                            + " \"focal\": \"" + (18 + model % 100) + "\", \"imageCircle\": \"46\"}");
        }
    }

    private void units() {
        long begin = today.minusYears(1).atStartOfDay().toEpochSecond(ZoneOffset.UTC);
        for (int unit = 1; unit <= UNITS; unit++) {
            int model = 1 + (unit - 1) % MODELS;
            sql.execute(
                    "INSERT INTO unit (version, tag, lens_model_id, holding, facts_json) VALUES (1, ?, ?, 'owned', ?)",
                    "U-" + unit,
                    model,
                    "{\"tag\": \"U-" + unit + "\", \"modelId\": " + model + ", \"value\": {\"amount\": \"4000.00\","
                            + " \"currency\": \"EUR\", \"setOn\": \"2026-01-01\"}}");
            long at = begin + random.nextInt(60) * DAY;
            for (int booking = 0; booking < BOOKINGS; booking++) {
                long length = DAY * (1 + random.nextInt(6));
                sql.execute(
                        "INSERT INTO occupation (version, unit_id, kind, starts_at, ends_at, free_at, is_cancelled,"
                                + " subject, person_id, recorded_at, facts_json) VALUES (1, ?, 'booking', ?, ?, ?, 0,"
                                + " 'x', 1, 0, '{}')",
                        unit,
                        at,
                        at + length,
                        at + length + 7_200);
                at += length + 7_200 + random.nextInt(120) * DAY;
            }
        }
    }

    /** Unit n is of model n, counted through all models again and again, so a round of them gives one of each. */
    private void sets() {
        for (int set = 1; set <= SETS; set++) {
            sql.execute(
                    "INSERT INTO lens_set (version, name, is_matched, facts_json) VALUES (1, ?, 0, '{}')",
                    "set " + set);
            int family = (set - 1) % FAMILIES;
            int round = (set - 1) / FAMILIES;
            for (int place = 0; place < IN_FAMILY; place++) {
                sql.execute(
                        "INSERT INTO set_membership (lens_set_id, unit_id, place, joined_at) VALUES (?, ?, ?, 0)",
                        set,
                        round * MODELS + model(family, place),
                        place);
            }
        }
    }

    private void cards() {
        List<Rate> ours = new ArrayList<>();
        for (int model = 1; model <= MODELS; model++) {
            ours.add(rate("m" + model, new Lets(Lets.Kind.MODEL, model), 6_000 + random.nextInt(6_000)));
        }
        for (int set = 1; set <= SETS; set++) {
            ours.add(rate("s" + set, new Lets(Lets.Kind.SET, set), 30_000 + random.nextInt(12_000)));
        }
        supplier(1, "The house", ours);
        for (int other = 0; other < SUPPLIERS; other++) {
            List<Rate> theirs = new ArrayList<>();
            for (int model = 1; model <= MODELS; model++) {
                theirs.add(rate("q" + model, new Lets(Lets.Kind.MODEL, model), 7_000 + random.nextInt(6_000)));
            }
            supplier(0, "Supplier " + other, theirs);
        }
    }

    private void supplier(int house, String name, List<Rate> rates) {
        sql.execute("INSERT INTO supplier (version, name, is_house) VALUES (1, ?, ?)", name, house);
        long id = sql.lastID().longValue();
        for (LocalDate from : List.of(today.minusYears(2), today.minusYears(1))) {
            sql.execute(
                    "INSERT INTO rate_card (version, supplier_id, name, currency, effective_from, rates_json) VALUES (1,"
                            + " ?, 'Card', 'EUR', ?, ?)",
                    id,
                    from.toString(),
                    FactsJson.rates(rates));
        }
    }

    private static Rate rate(String code, Lets lets, long dayInCents) {
        RentalTerms terms = new RentalTerms(
                List.of(
                        new RentalTerms.Block(1, Money.ofMinor(EUR, dayInCents), Optional.empty()),
                        new RentalTerms.Block(7, Money.ofMinor(EUR, dayInCents * 7 / 2), Optional.empty())),
                Optional.empty(),
                Map.of(),
                List.of(new RentalTerms.LongHire(10, Percent.of("5"))),
                Money.zero(EUR),
                Money.zero(EUR),
                List.of(
                        new RentalTerms.AddOn("waiver", Percent.of("10"), Set.of(RentalTerms.AddOn.HIRE)),
                        new RentalTerms.AddOn(
                                "sales tax", Percent.of("20"), Set.of(RentalTerms.AddOn.HIRE, "waiver"))));
        return new Rate(
                code,
                Map.of(),
                3,
                terms,
                List.of(),
                Optional.of(lets),
                Map.of("waiver", Mark.WAIVER, "sales tax", Mark.TAX));
    }
}
