package dayglass.wire.verdict;

import dayglass.base.Currency;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.ownership.NetCost;
import dayglass.cost.ownership.OwnSales;
import dayglass.cost.ownership.Ownership;
import dayglass.cost.ownership.PurchaseTerms;
import dayglass.cost.rental.RentalTerms;
import dayglass.cost.scenario.Scenario;
import dayglass.cost.scenario.Spread;
import dayglass.cost.scenario.Uncertainty;
import dayglass.cost.scenario.VerdictQuestion;
import dayglass.cost.verdict.BreakEvenRule;
import dayglass.cost.verdict.RentOrBuy;
import dayglass.wire.Checked;
import dayglass.wire.Decimals;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.PurchaseReader;
import dayglass.wire.costing.RentalReader;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A whole request: every default filled in, or every fault told. */
public final class VerdictRequestReader {
    private static final int MOST_PERCENT = 1000;
    private static final int MOST_CHANGE = 100;
    private static final int MOST_RATES = 10;
    private static final int MOST_DAYS = 366;
    private static final int MOST_DRAWS = 100_000;
    private static final int MOST_SEED = 999_999_999;
    private static final int MOST_HIRES = 2_000;
    private static final int USUAL_DRAWS = 10_000;
    private static final String LETTING_DAYS = "lettingDaysPerYear";

    private final Read<Currency> currency;
    private final Reader<Money> money;

    private VerdictRequestReader(Read<Currency> currency) {
        this.currency = currency;
        this.money = Decimals.money(currency);
    }

    /** What the text asks, or everything that is wrong with it. */
    public static Checked<VerdictQuestion> read(byte[] text) {
        return request().read(text);
    }

    public static Reader<VerdictQuestion> request() {
        return Fields.object(
                fields -> new VerdictRequestReader(fields.required("currency", Decimals.currency())).question(fields));
    }

    private Read<VerdictQuestion> question(Fields fields) {
        Read<Percent> discount =
                fields.optional("discountRatePercent", Decimals.percent(0, MOST_PERCENT), Percent.ZERO);
        Read<PurchaseTerms> purchase = fields.required("purchase", PurchaseReader.terms(currency));
        Read<List<OwnSales.Sale>> sales =
                fields.optional("ownSales", Readers.list(Fields.object(this::sale)), List.of());
        Read<Optional<Ownership.Running>> running = fields.optional("running", Fields.object(this::running));
        Read<Optional<Ownership.Loan>> loan = fields.optional("loan", Fields.object(this::loan));
        Read<List<JobsReader.Job>> jobs = fields.required("jobs", JobsReader::jobs);
        Read<List<RentalTerms>> rates =
                fields.required("rates", Readers.notEmpty(Readers.list(RentalReader.terms(currency))));
        requireCover(fields, rates);
        requireDays(fields, purchase, jobs);
        requireOutlay(fields, purchase, loan);
        Read<Percent> change =
                fields.optional("rateChangePercentPerYear", Decimals.percent(-MOST_CHANGE, MOST_CHANGE), Percent.ZERO);
        Read<Optional<VerdictQuestion.Unsure>> unsure =
                fields.optional("uncertainty", Fields.object(each -> unsure(each, jobs, purchase)));
        Read<Optional<VerdictQuestion.WrittenOff>> writtenOff = fields.optional(
                "depreciation", DepreciationReader.of(purchase.found().map(PurchaseTerms::price), money));
        Read<List<BreakEvenRule.Hire>> history =
                fields.optional("history", Readers.list(Fields.object(this::hire)), List.of());
        if (history.isGood() && history.get().size() > MOST_HIRES) {
            fields.place().member("history").fault("has more than " + MOST_HIRES + " entries: leave the oldest out");
        }
        return fields.build(() -> new VerdictQuestion(
                new RentOrBuy(
                        discount.get(),
                        bySales(purchase.get(), sales.get()),
                        running.get().orElseGet(this::noRunning),
                        loan.get(),
                        jobs.get().stream().map(JobsReader.Job::kind).toList(),
                        rates.get(),
                        change.get()),
                unsure.get(),
                writtenOff.get(),
                history.get()));
    }

    private static void requireCover(Fields fields, Read<List<RentalTerms>> rates) {
        // Entries at fault are left out of the list, and say nothing here.
        if (!rates.isGood() || rates.get().isEmpty()) {
            return;
        }
        if (rates.get().size() > MOST_RATES) {
            fields.place().member("rates").fault("has more than " + MOST_RATES + " entries: leave the dear ones out");
        }
        boolean coverable = rates.get().stream()
                .flatMap(terms -> terms.blocks().stream())
                .anyMatch(block -> block.startsOn().isEmpty());
        if (!coverable) {
            fields.place()
                    .member("rates")
                    .fault("has no block that may begin on any day, so that a job may stay uncovered: add one");
        }
    }

    /** What is let on a day is not used by its owner on that day. */
    private static void requireDays(Fields fields, Read<PurchaseTerms> purchase, Read<List<JobsReader.Job>> jobs) {
        BigDecimal let = purchase.found()
                .flatMap(PurchaseTerms::letting)
                .map(PurchaseTerms.Letting::daysPerYear)
                .orElse(BigDecimal.ZERO);
        BigDecimal used = jobs.found().stream()
                .flatMap(List::stream)
                .map(job -> job.kind().daysPerYear())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        if (let.signum() > 0 && let.add(used).compareTo(BigDecimal.valueOf(MOST_DAYS)) > 0) {
            fields.place()
                    .member("purchase")
                    .member("letting")
                    .member("daysPerYear")
                    .fault("comes with the days of the jobs to "
                            + let.add(used).stripTrailingZeros().toPlainString()
                            + " days a year, which has 366: make it less");
        }
    }

    /** Borrowing more than is paid would leave nothing put in of which there could be a return. */
    private static void requireOutlay(
            Fields fields, Read<PurchaseTerms> purchase, Read<Optional<Ownership.Loan>> loan) {
        Optional<Money> outlay = purchase.found().map(NetCost::outlay);
        Optional<Money> borrowed = loan.found().flatMap(each -> each).map(Ownership.Loan::amount);
        if (outlay.isPresent() && borrowed.isPresent() && borrowed.get().compareTo(outlay.get()) > 0) {
            fields.place()
                    .member("loan")
                    .member("amount")
                    .fault("is more than the " + outlay.get()
                            + " that price, tax and extras come to: borrow no more than that");
        }
    }

    private static PurchaseTerms bySales(PurchaseTerms terms, List<OwnSales.Sale> sales) {
        return sales.isEmpty()
                ? terms
                : new PurchaseTerms(
                        terms.price(),
                        terms.tax(),
                        terms.extras(),
                        terms.termMonths(),
                        new PurchaseTerms.Resale(
                                OwnSales.points(terms.price(), sales),
                                terms.resale().sellingCost()),
                        terms.holding(),
                        terms.service(),
                        terms.letting());
    }

    private Money none() {
        return Money.zero(currency.get());
    }

    private Ownership.Running noRunning() {
        return new Ownership.Running(none(), none(), Optional.empty());
    }

    private Read<OwnSales.Sale> sale(Fields fields) {
        Read<Integer> months = fields.required("months", Readers.whole(1, PurchaseReader.MOST_MONTHS));
        Read<Money> paid = fields.required("paid", money);
        Read<Money> soldFor = fields.required("soldFor", money);
        if (paid.isGood() && paid.get().signum() == 0) {
            fields.place().member("paid").fault("must be more than 0");
        }
        return fields.build(() -> new OwnSales.Sale(months.get(), paid.get(), soldFor.get()));
    }

    private Read<Ownership.Running> running(Fields fields) {
        Read<Optional<Money>> used = fields.optional("perDayUsed", money);
        Read<Optional<Money>> wear = fields.optional("wearPerDayLet", money);
        Read<Optional<Ownership.ServiceByDays>> service =
                fields.optional("service", Fields.object(this::serviceByDays));
        return fields.build(() -> new Ownership.Running(
                used.get().orElseGet(this::none), wear.get().orElseGet(this::none), service.get()));
    }

    private Read<Ownership.ServiceByDays> serviceByDays(Fields fields) {
        Read<Integer> every = fields.required("everyDaysOut", Readers.whole(1, MOST_PERCENT));
        Read<Money> cost = fields.required("cost", money);
        return fields.build(() -> new Ownership.ServiceByDays(every.get(), cost.get()));
    }

    private Read<Ownership.Loan> loan(Fields fields) {
        Read<Money> amount = fields.required("amount", money);
        Read<Percent> rate = fields.required("ratePercentPerYear", Decimals.percent(0, MOST_PERCENT));
        Read<Integer> months = fields.required("months", Readers.whole(1, PurchaseReader.MOST_MONTHS));
        return fields.build(() -> new Ownership.Loan(amount.get(), rate.get(), months.get()));
    }

    private Read<BreakEvenRule.Hire> hire(Fields fields) {
        Read<LocalDate> date = fields.required("date", Readers.date());
        Read<Optional<LocalDate>> to = fields.optional("to", Readers.date());
        Read<Money> rent = fields.required("rent", money);
        if (date.isGood() && to.isGood() && to.get().isPresent()) {
            requireSpan(fields, date.get(), to.get().get());
        }
        return fields.build(() -> new BreakEvenRule.Hire(date.get(), to.get().orElse(date.get()), rent.get()));
    }

    private static void requireSpan(Fields fields, LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            fields.place().member("to").fault("ends before it starts on " + from + ": swap the two days");
        } else if (from.plusDays(MOST_DAYS).isBefore(to)) {
            fields.place().member("to").fault("is more than " + MOST_DAYS + " days after " + from + ": split it");
        }
    }

    private static Read<VerdictQuestion.Unsure> unsure(
            Fields fields, Read<List<JobsReader.Job>> jobs, Read<PurchaseTerms> purchase) {
        Read<Integer> draws = fields.optional("draws", Readers.whole(1, MOST_DRAWS), USUAL_DRAWS);
        Read<Integer> seed = fields.optional("seed", Readers.whole(0, MOST_SEED), 1);
        Read<Optional<Spread>> slip = fields.optional("slipDays", SpreadReader.between(0, MOST_DAYS));
        Read<Optional<Spread>> resale = fields.optional("resalePercent", SpreadReader.between(0, MOST_PERCENT));
        Read<Optional<Spread>> letting = fields.optional(LETTING_DAYS, SpreadReader.between(0, MOST_DAYS));
        if (fields.has(LETTING_DAYS)
                && purchase.found().filter(terms -> terms.letting().isEmpty()).isPresent()) {
            fields.place()
                    .member(LETTING_DAYS)
                    .fault(
                            "spreads the days let, but nothing is let: give the purchase its \"letting\", or leave this"
                                    + " out",
                            "nothing is let: fill in the days let, their rate and the owner's share, or leave this"
                                    + " blank");
        }
        Read<Optional<Spread>> change =
                fields.optional("rateChangePercentPerYear", SpreadReader.between(-MOST_CHANGE, MOST_CHANGE));
        return jobs.isGood()
                ? fields.build(() -> new VerdictQuestion.Unsure(
                        new Scenario.Spreads(
                                slip.get(),
                                resale.get(),
                                letting.get(),
                                change.get(),
                                jobs.get().stream().map(JobsReader.Job::unsure).toList()),
                        new Uncertainty.Sample(draws.get(), seed.get())))
                : Read.bad();
    }
}
