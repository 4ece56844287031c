package dayglass.app;

import dayglass.books.list.JobLists;
import dayglass.house.Household;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.Keyed;
import dayglass.web.api.books.BooksContext;
import dayglass.web.api.books.ChartApi;
import dayglass.web.api.books.CostCodesApi;
import dayglass.web.api.books.EntryApi;
import dayglass.web.api.books.ExportApi;
import dayglass.web.api.books.InvoiceApi;
import dayglass.web.api.books.LayoutApi;
import dayglass.web.api.books.OrderApi;
import dayglass.web.api.books.OwnGearApi;
import dayglass.web.api.books.PeriodApi;
import dayglass.web.api.books.RentalOrderApi;
import dayglass.web.api.books.ReportApi;
import dayglass.web.api.catalogue.CardTableApi;
import dayglass.web.api.catalogue.PurchaseOfferApi;
import dayglass.web.api.catalogue.RateCardApi;
import dayglass.web.api.catalogue.SupplierApi;
import dayglass.web.api.catalogue.SupplierTableApi;
import dayglass.web.api.desk.DeskApi;
import dayglass.web.api.desk.TodayApi;
import dayglass.web.api.house.ChangeApi;
import dayglass.web.api.house.HouseApi;
import dayglass.web.api.house.PersonApi;
import dayglass.web.api.house.WhoIsThere;
import dayglass.web.api.inventory.ShelfApi;
import dayglass.web.api.inventory.ShelfImportApi;
import dayglass.web.api.inventory.agenda.AgendaApi;
import dayglass.web.api.inventory.booking.AvailabilityApi;
import dayglass.web.api.inventory.booking.HoldApi;
import dayglass.web.api.inventory.booking.OccupationApi;
import dayglass.web.api.inventory.condition.NoteApi;
import dayglass.web.api.inventory.service.ServiceApi;
import dayglass.web.api.inventory.worth.GlassApi;
import dayglass.web.api.job.JobApi;
import dayglass.web.api.optics.FitApi;
import dayglass.web.api.optics.GearApi;
import dayglass.web.api.planning.CostingApi;
import dayglass.web.api.planning.ways.BriefApi;
import dayglass.web.api.planning.ways.OptionsSheetApi;
import dayglass.web.api.planning.ways.WayApi;
import dayglass.web.api.verdict.VerdictApi;
import dayglass.web.page.Assets;
import dayglass.web.page.ErrorPages;
import dayglass.web.page.Html;
import dayglass.web.page.PageSources;
import dayglass.web.page.agenda.DueBackPage;
import dayglass.web.page.bench.BenchPages;
import dayglass.web.page.booking.BookingPages;
import dayglass.web.page.books.BooksPages;
import dayglass.web.page.costing.CostingPages;
import dayglass.web.page.desk.DeskPages;
import dayglass.web.page.desk.DeskSources;
import dayglass.web.page.desk.paper.DeskPapers;
import dayglass.web.page.desk.paper.PaperSources;
import dayglass.web.page.desk.price.PackagePage;
import dayglass.web.page.desk.rental.QuotePages;
import dayglass.web.page.desk.rental.RentalPages;
import dayglass.web.page.desk.rental.RulesPage;
import dayglass.web.page.desk.today.TodayPage;
import dayglass.web.page.fit.CameraPages;
import dayglass.web.page.fit.FitPages;
import dayglass.web.page.fit.FitSources;
import dayglass.web.page.house.HousePages;
import dayglass.web.page.job.JobPages;
import dayglass.web.page.job.JobsPages;
import dayglass.web.page.job.RunPages;
import dayglass.web.page.label.LabelPages;
import dayglass.web.page.shelf.NotePages;
import dayglass.web.page.shelf.ShelfPages;
import dayglass.web.page.shelf.UnitPage;
import dayglass.web.page.verdict.VerdictPages;
import dayglass.web.page.verdict.VerdictPaper;
import dayglass.web.page.wall.WallPages;
import dayglass.web.page.ways.SheetPages;
import dayglass.web.page.ways.SheetPaper;
import dayglass.web.page.ways.WaySources;
import dayglass.web.page.worth.GlassPage;
import dayglass.web.reference.ReferencePage;
import dayglass.web.weighing.Weighings;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Every address that the server answers. */
public final class ServerRoutes {
    private ServerRoutes() {}

    public static List<Consumer<RoutesConfig>> of(Rooms rooms) {
        Weighings weighings = new Weighings(rooms.clock());
        return List.of(
                new WhoIsThere(rooms.household())::addTo,
                routes -> api(rooms, weighings, routes),
                ReferencePage::addTo,
                routes -> jobPages(pageSources(rooms), routes),
                routes -> housePages(rooms, weighings, routes));
    }

    /** The pages of jobs and costings, with what every page needs. */
    public static void jobPages(PageSources sources, RoutesConfig routes) {
        Html html = new Html(sources.household());
        RunPages runs = new RunPages(sources, html);
        new Assets().route(routes);
        new ErrorPages(html).route(routes);
        new JobsPages(sources, html).route(routes);
        new JobPages(sources, html, runs).route(routes);
        runs.route(routes);
        new CostingPages(sources, html).route(routes);
    }

    private static void housePages(Rooms rooms, Weighings weighings, RoutesConfig routes) {
        Html html = new Html(rooms.household());
        new HousePages(rooms.household(), html).route(routes);
        ShelfPages.route(routes, rooms.shelf(), rooms.shelfImport(), rooms.household());
        desk(rooms, html, routes);
        new DeskPapers(new PaperSources(rooms.desk(), rooms.shelf(), rooms.household()), html).route(routes);
        new TodayPage(rooms.gatherToday(), html).route(routes);
        new UnitPage(
                        new UnitPage.Sources(
                                rooms.unitArchive(), rooms.lettingIncome(), rooms.servicePlans(), rooms.household()),
                        html)
                .route(routes);
        BookingPages.route(routes, rooms.shelf(), rooms.whereAreUnits(), rooms.household());
        new WallPages(rooms.shelf(), rooms.whereAreUnits(), html).route(routes);
        new VerdictPages(rooms.household(), rooms.ownPast(), weighings, paper(rooms), html).route(routes);
        new NotePages(rooms.notebook(), rooms.household(), html).route(routes);
        FitSources fit = new FitSources(rooms.shelf().models(), rooms.cameras(), rooms.ownMounts());
        new FitPages(fit, html).route(routes);
        new CameraPages(fit, html).route(routes);
        new SheetPages(waySources(rooms), html, rooms.clock()).route(routes);
        new LabelPages(rooms.shelf(), rooms.household().settings(), html).route(routes);
        new BooksPages(
                        rooms.books(),
                        new BooksPages.Plans(
                                rooms.costFigures(),
                                rooms.typedFigures(),
                                rooms.costings(),
                                rooms.costCodes(),
                                rooms.exportLayouts(),
                                rooms.bringIn(),
                                rooms.commitOrder(),
                                new JobLists(rooms.books(), rooms.shelf())),
                        rooms.household(),
                        rooms.clock())
                .route(routes);
        new GlassPage(rooms.myGlass(), rooms.shelf(), html).route(routes);
        new DueBackPage(rooms.agenda(), rooms.whereAreUnits(), html).route(routes);
        new BenchPages(
                        new BenchPages.Service(rooms.servicePlans(), rooms.dueList()),
                        rooms.whereAreUnits(),
                        rooms.shelf().units(),
                        html)
                .route(routes);
    }

    private static void desk(Rooms rooms, Html html, RoutesConfig routes) {
        DeskSources sources = new DeskSources(
                rooms.sources().suppliers(),
                rooms.sources().rateCards(),
                rooms.sources().purchaseOffers(),
                rooms.shelf(),
                new DeskSources.Tables(rooms.cardTables(), rooms.supplierTables()),
                rooms.desk(),
                rooms.whereAreUnits(),
                rooms.household(),
                rooms.clock());
        new DeskPages(sources, html).route(routes);
        PackagePage packages = new PackagePage(sources, html);
        packages.route(routes);
        new QuotePages(sources, html, packages).route(routes);
        new RentalPages(sources, html).route(routes);
        new RulesPage(sources, html).route(routes);
    }

    private static VerdictPaper paper(Rooms rooms) {
        return new VerdictPaper(rooms.household(), rooms.clock(), new Html(rooms.household()));
    }

    private static void api(Rooms rooms, Weighings weighings, RoutesConfig routes) {
        SupplierApi.of(rooms.sources().suppliers()).addTo(routes);
        new SupplierTableApi(rooms.supplierTables()).addTo(routes);
        RateCardApi.of(rooms.sources().rateCards()).addTo(routes);
        new CardTableApi(rooms.cardTables(), rooms.sources().rateCards()).addTo(routes);
        PurchaseOfferApi.of(rooms.sources().purchaseOffers()).addTo(routes);
        house(rooms.household(), routes);
        new ShelfApi(rooms.shelf(), rooms.household().settings()).addTo(routes);
        whereabouts(rooms, routes);
        new ShelfImportApi(rooms.shelfImport()).addTo(routes);
        new NoteApi(rooms.notebook(), rooms.household()).addTo(routes);
        new JobApi(rooms.jobs(), rooms.copyJob(), rooms.importJob(), rooms.resolveJob()).addTo(routes);
        new CostingApi(rooms.makeCosting(), rooms.runAgain(), rooms.costings()).addTo(routes);
        new CostCodesApi(rooms.jobs(), rooms.costCodes()).addTo(routes);
        books(rooms, routes);
        DeskApi.addTo(routes, rooms.desk(), new Keyed(rooms.household().keyedAnswers())::once);
        new TodayApi(rooms.gatherToday()).addTo(routes);
        FitApi.addTo(routes);
        new BriefApi(rooms.jobs(), rooms.briefs()).addTo(routes);
        new WayApi(rooms.jobs(), rooms.ways()).addTo(routes);
        new OptionsSheetApi(
                        rooms.optionsSheets(),
                        new Keyed(rooms.household().keyedAnswers()),
                        new SheetPaper(waySources(rooms))::bytes)
                .addTo(routes);
        new GearApi(rooms.cameras(), rooms.ownMounts()).addTo(routes);
        new VerdictApi(rooms.ownPast(), weighings, paper(rooms)::print).addTo(routes);
    }

    private static WaySources waySources(Rooms rooms) {
        return new WaySources(
                rooms.jobs(),
                rooms.briefs(),
                rooms.ways(),
                rooms.optionsSheets(),
                rooms.sources(),
                rooms.shelf().models(),
                rooms.ownMounts());
    }

    private static void books(Rooms rooms, RoutesConfig routes) {
        BooksContext in = new BooksContext(
                rooms.books(),
                rooms.household().settings(),
                new Keyed(rooms.household().keyedAnswers())::once);
        new EntryApi(in).addTo(routes);
        new ChartApi(in).addTo(routes);
        new PeriodApi(in).addTo(routes);
        new OrderApi(in, rooms.costings(), rooms.costCodes()).addTo(routes);
        new InvoiceApi(in).addTo(routes);
        new ReportApi(in, rooms.costFigures(), rooms.typedFigures()).addTo(routes);
        new ExportApi(in, rooms.exportLayouts()).addTo(routes);
        new OwnGearApi(in, rooms.bringIn()).addTo(routes);
        new RentalOrderApi(in, rooms.commitOrder()).addTo(routes);
        LayoutApi.of(rooms.exportLayouts()).addTo(routes);
    }

    private static void whereabouts(Rooms rooms, RoutesConfig routes) {
        Whereabouts whereabouts = rooms.whereAreUnits();
        OccupationApi.addTo(routes, whereabouts, new Keyed(rooms.household().keyedAnswers())::once);
        HoldApi.of(whereabouts).addTo(routes);
        new AvailabilityApi(whereabouts).addTo(routes);
        new GlassApi(rooms.myGlass()).addTo(routes);
        new AgendaApi(rooms.agenda(), whereabouts).addTo(routes);
        new ServiceApi(rooms.servicePlans(), rooms.dueList(), whereabouts.settings(), rooms.clock()).addTo(routes);
    }

    private static void house(Household household, RoutesConfig routes) {
        PersonApi.of(household.people()).addTo(routes);
        new HouseApi(household.settings()).addTo(routes);
        new ChangeApi(household).addTo(routes);
    }

    private static PageSources pageSources(Rooms rooms) {
        return new PageSources(
                rooms.jobs(),
                rooms.sources(),
                rooms.costings(),
                rooms.costCodes(),
                rooms.resolveJob(),
                rooms.copyJob(),
                rooms.importJob(),
                (job, stop) -> rooms.makeCosting().ofJob(job, Optional.empty(), stop),
                rooms.transactions(),
                rooms.clock(),
                rooms.household());
    }
}
