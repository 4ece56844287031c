package dayglass.app;

import dayglass.base.Transactions;
import dayglass.books.JobCostCodes;
import dayglass.books.export.Layouts;
import dayglass.books.gear.BringIn;
import dayglass.books.gear.GearBooks;
import dayglass.books.post.Books;
import dayglass.books.post.CommitOrder;
import dayglass.books.report.CostFigures;
import dayglass.books.report.TypedFigures;
import dayglass.catalogue.Cameras;
import dayglass.catalogue.OwnMounts;
import dayglass.desk.KeptRules;
import dayglass.desk.earned.RentalIncome;
import dayglass.desk.find.Finder;
import dayglass.desk.price.PricePackage;
import dayglass.desk.quote.MakeQuote;
import dayglass.desk.quote.Quotes;
import dayglass.desk.rental.Desk;
import dayglass.desk.rental.EndRental;
import dayglass.desk.rental.LateDays;
import dayglass.desk.rental.LetOut;
import dayglass.desk.rental.RentIn;
import dayglass.desk.rental.Rentals;
import dayglass.desk.rental.RunRental;
import dayglass.desk.today.GatherToday;
import dayglass.desk.today.RentalGroups;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.house.WhoActs;
import dayglass.inventory.Shelf;
import dayglass.inventory.agenda.Agenda;
import dayglass.inventory.booking.BookUnits;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Occupations;
import dayglass.inventory.booking.Whereabouts;
import dayglass.inventory.condition.ConditionNotes;
import dayglass.inventory.condition.NoteCondition;
import dayglass.inventory.condition.Notebook;
import dayglass.inventory.life.LettingIncome;
import dayglass.inventory.life.UnitArchive;
import dayglass.inventory.picture.Pictures;
import dayglass.inventory.service.DueList;
import dayglass.inventory.service.Overdue;
import dayglass.inventory.service.ServicePlans;
import dayglass.inventory.worth.MyGlass;
import dayglass.job.Briefs;
import dayglass.job.Jobs;
import dayglass.job.Ways;
import dayglass.planning.CopyJob;
import dayglass.planning.Costings;
import dayglass.planning.Engine;
import dayglass.planning.ImportJob;
import dayglass.planning.MakeCosting;
import dayglass.planning.OptionSources;
import dayglass.planning.ResolveJob;
import dayglass.planning.RunAgain;
import dayglass.planning.past.OwnPast;
import dayglass.planning.ways.CostWay;
import dayglass.planning.ways.OptionsSheets;
import dayglass.shelf.table.CardTables;
import dayglass.shelf.table.ShelfImport;
import dayglass.shelf.table.SupplierTables;
import dayglass.storage.Database;
import dayglass.storage.Recording;
import dayglass.storage.books.JooqCharts;
import dayglass.storage.books.JooqCostFigures;
import dayglass.storage.books.JooqEntries;
import dayglass.storage.books.JooqGear;
import dayglass.storage.books.JooqInvoices;
import dayglass.storage.books.JooqJobCalendars;
import dayglass.storage.books.JooqJobCostCodes;
import dayglass.storage.books.JooqLayouts;
import dayglass.storage.books.JooqPeriodActs;
import dayglass.storage.books.JooqRentalOrders;
import dayglass.storage.books.JooqTypedFigures;
import dayglass.storage.catalogue.JooqCameras;
import dayglass.storage.catalogue.JooqLensModels;
import dayglass.storage.catalogue.JooqMounts;
import dayglass.storage.catalogue.JooqPurchaseOffers;
import dayglass.storage.catalogue.JooqRateCards;
import dayglass.storage.catalogue.JooqSuppliers;
import dayglass.storage.desk.JooqDeskRules;
import dayglass.storage.desk.JooqQuotes;
import dayglass.storage.desk.JooqRentals;
import dayglass.storage.house.JooqChanges;
import dayglass.storage.house.JooqHouseSettings;
import dayglass.storage.house.JooqKeyedAnswers;
import dayglass.storage.house.JooqPeople;
import dayglass.storage.inventory.JooqLensSets;
import dayglass.storage.inventory.JooqUnits;
import dayglass.storage.inventory.booking.JooqHolds;
import dayglass.storage.inventory.booking.JooqOccupationVersions;
import dayglass.storage.inventory.booking.JooqOccupations;
import dayglass.storage.inventory.booking.JooqOverrides;
import dayglass.storage.inventory.booking.JooqUnitStates;
import dayglass.storage.inventory.condition.JooqConditionNotes;
import dayglass.storage.inventory.service.JooqServicePlans;
import dayglass.storage.job.JooqBriefs;
import dayglass.storage.job.JooqJobs;
import dayglass.storage.job.JooqWays;
import dayglass.storage.picture.PictureFolder;
import dayglass.storage.planning.JooqCostings;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The collections in the database and the use cases on them, wired together; closing it ends what is being worked out
 * and closes the database.
 */
public final class Rooms implements AutoCloseable {
    private final Database database;
    private final Clock clock;
    private final Engine engine;
    private final Jobs jobs;
    private final Costings costings;
    private final Shelf shelf;
    private final OptionSources sources;
    private final JobCostCodes costCodes;
    private final Household household;
    private final ServicePlans servicePlans;
    private final Whereabouts whereabouts;
    private final Notebook notebook;
    private final OptionsSheets optionsSheets;

    private Rooms(Database database, Pictures pictures, WhoActs whoActs, Clock clock) {
        this.database = database;
        this.clock = clock;
        this.engine = new Engine(Main.version(), clock);
        this.jobs = new JooqJobs(database);
        this.costings = new JooqCostings(database);
        this.costCodes = new JooqJobCostCodes(database);
        this.shelf =
                new Shelf(new JooqLensModels(database), new JooqUnits(database), new JooqLensSets(database, clock));
        this.household = new Household(
                JooqHouseSettings.opened(database, region(clock.getZone())),
                new JooqPeople(database),
                new JooqChanges(database),
                whoActs,
                new JooqKeyedAnswers(database, clock));
        ConditionNotes notes = new JooqConditionNotes(database);
        this.notebook = new Notebook(
                shelf.units(),
                notes,
                pictures,
                new NoteCondition(shelf.units(), new NoteCondition.Kept(notes, pictures), whoActs, clock));
        this.servicePlans = new JooqServicePlans(database);
        this.whereabouts = whereabouts();
        this.sources = new OptionSources(
                new JooqSuppliers(database),
                new JooqRateCards(database),
                new JooqPurchaseOffers(database),
                shelf.units(),
                shelf.sets(),
                whereabouts.freeDays());
        this.optionsSheets = new OptionsSheets(
                new OptionsSheets.Asked(jobs, briefs(), ways(), ownMounts(), costings),
                new CostWay(sources, shelf.models(), resolveJob(), makeCosting()),
                clock);
    }

    private Whereabouts whereabouts() {
        Occupations occupations = new JooqOccupations(database);
        return new Whereabouts(
                occupations,
                new JooqHolds(database),
                new JooqUnitStates(database),
                new HandOver.Door(
                        List.of(new Overdue(servicePlans, occupations, household.settings(), clock)),
                        new JooqOverrides(database)),
                new BookUnits.Surroundings(household.settings(), database, household.whoActs(), clock));
    }

    /** The house keeps time by a region, as offsets alone do not know when clocks change. */
    private static ZoneId region(ZoneId zone) {
        return ZoneId.getAvailableZoneIds().contains(zone.getId()) ? zone : ZoneId.of("UTC");
    }

    /**
     * Opens the database and makes it where there is none.
     *
     * @throws dayglass.storage.DatabaseUnusable where that cannot be
     */
    public static Rooms open(Path databaseFile, Clock clock) {
        quietLogs();
        WhoActs whoActs = new WhoActs(new Person.Id(1));
        return new Rooms(
                Database.open(databaseFile, new Recording(whoActs, clock)),
                PictureFolder.beside(databaseFile),
                whoActs,
                clock);
    }

    /** The libraries tell every step of theirs; people are told what goes wrong. */
    private static void quietLogs() {
        Logger.getLogger("").setLevel(Level.WARNING);
    }

    public Transactions transactions() {
        return database;
    }

    public Clock clock() {
        return clock;
    }

    public Engine engine() {
        return engine;
    }

    public Jobs jobs() {
        return jobs;
    }

    public Costings costings() {
        return costings;
    }

    public JobCostCodes costCodes() {
        return costCodes;
    }

    public Shelf shelf() {
        return shelf;
    }

    public ShelfImport shelfImport() {
        return new ShelfImport(shelf, database, clock);
    }

    public CardTables cardTables() {
        return new CardTables(sources.rateCards(), shelf, database);
    }

    public SupplierTables supplierTables() {
        return new SupplierTables(sources.suppliers(), database);
    }

    public OptionSources sources() {
        return sources;
    }

    public Whereabouts whereAreUnits() {
        return whereabouts;
    }

    public ServicePlans servicePlans() {
        return servicePlans;
    }

    public DueList dueList() {
        return new DueList(servicePlans, shelf.units(), whereabouts.occupations(), household.settings());
    }

    public UnitArchive unitArchive() {
        return new UnitArchive(
                shelf, notebook.notes(), whereabouts, new JooqOccupationVersions(database), household.changes());
    }

    public LettingIncome lettingIncome() {
        return new RentalIncome(new JooqRentals(database), shelf.units(), household.settings());
    }

    public MyGlass myGlass() {
        return new MyGlass(unitArchive(), sources.suppliers(), sources.rateCards(), lettingIncome());
    }

    public OwnPast ownPast() {
        return new OwnPast(jobs, myGlass(), household.settings(), clock);
    }

    public Agenda agenda() {
        return new Agenda(shelf, whereabouts, dueList(), new RentalGroups(new JooqRentals(database)));
    }

    public Briefs briefs() {
        return new JooqBriefs(database);
    }

    public Ways ways() {
        return new JooqWays(database);
    }

    public OptionsSheets optionsSheets() {
        return optionsSheets;
    }

    public Cameras cameras() {
        return new JooqCameras(database);
    }

    public OwnMounts ownMounts() {
        return new JooqMounts(database);
    }

    public Books books() {
        return new Books(
                new JooqEntries(database),
                new JooqCharts(database),
                new Books.Periods(new JooqJobCalendars(database), new JooqPeriodActs(database)),
                new JooqInvoices(database),
                new Books.House(jobs, household.people(), household.whoActs(), database));
    }

    /** The desk with all that it asks. */
    public Desk desk() {
        KeptRules rules = new JooqDeskRules(database);
        PricePackage pricing = new PricePackage(
                shelf, whereabouts, new PricePackage.Cards(sources.suppliers(), sources.rateCards(), rules));
        Quotes quotes = new JooqQuotes(database);
        Rentals rentals = new JooqRentals(database);
        return new Desk(
                rules,
                pricing,
                new Finder(shelf, whereabouts),
                quotes,
                new MakeQuote(
                        quotes, pricing, rules, new MakeQuote.House(household.people(), household.whoActs(), database)),
                rentals,
                new RunRental(new RunRental.Papers(quotes, rentals), shelf, whereabouts, rules),
                new RentIn(rentals, new JooqRentalOrders(database), whereabouts),
                new EndRental(rentals, new JooqRentalOrders(database), whereabouts, rules),
                new LetOut(
                        rentals,
                        shelf,
                        whereabouts,
                        new LateDays(rentals, rules, household.settings(), household.whoActs())));
    }

    public GatherToday gatherToday() {
        return new GatherToday(desk(), shelf, whereabouts, agenda());
    }

    public GearBooks gearBooks() {
        return new GearBooks(books(), new JooqGear(database, shelf.units()), shelf.units());
    }

    public Layouts exportLayouts() {
        return new JooqLayouts(database);
    }

    public TypedFigures typedFigures() {
        return new JooqTypedFigures(database);
    }

    public BringIn bringIn() {
        return new BringIn(gearBooks(), lettingIncome(), whereabouts.occupations(), household.settings());
    }

    public CommitOrder commitOrder() {
        return new CommitOrder(books(), new JooqRentals(database), new JooqRentalOrders(database));
    }

    public CostFigures costFigures() {
        return new JooqCostFigures(database);
    }

    public Household household() {
        return household;
    }

    public Notebook notebook() {
        return notebook;
    }

    public ResolveJob resolveJob() {
        return new ResolveJob(sources, clock);
    }

    public CopyJob copyJob() {
        return new CopyJob(jobs, database);
    }

    public ImportJob importJob() {
        return new ImportJob(jobs, sources, database);
    }

    public MakeCosting makeCosting() {
        return new MakeCosting(jobs, resolveJob(), costings, engine);
    }

    public RunAgain runAgain() {
        return new RunAgain(engine);
    }

    @Override
    public void close() {
        engine.end();
        database.close();
    }
}
