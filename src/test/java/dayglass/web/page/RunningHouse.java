package dayglass.web.page;

import dayglass.app.Rooms;
import dayglass.app.ServerRoutes;
import dayglass.web.WebServer;
import dayglass.web.api.house.WhoIsThere;
import dayglass.web.page.desk.DeskPages;
import dayglass.web.page.desk.DeskSources;
import dayglass.web.page.shelf.ShelfPages;
import dayglass.web.page.shelf.UnitPage;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The pages over a real server and a real database. */
final class RunningHouse implements AutoCloseable {
    private final Rooms rooms;
    private final WebServer server;

    RunningHouse(Path folder) {
        this(folder, UnaryOperator.identity());
    }

    /** @param pace what stands between the pages and the engine */
    RunningHouse(Path folder, UnaryOperator<PageSources.JobCosting> pace) {
        rooms = Rooms.open(folder.resolve("house.db"), Clock.systemUTC());
        PageSources sources = new PageSources(
                rooms.jobs(),
                rooms.sources(),
                rooms.costings(),
                rooms.costCodes(),
                rooms.resolveJob(),
                rooms.copyJob(),
                rooms.importJob(),
                pace.apply((job, stop) -> rooms.makeCosting().ofJob(job, Optional.empty(), stop)),
                rooms.transactions(),
                rooms.clock(),
                rooms.household());
        server = WebServer.start(
                new WebServer.Binding(WebServer.Binding.LOOPBACK, 0),
                List.of(
                        new WhoIsThere(rooms.household())::addTo,
                        routes -> ServerRoutes.jobPages(sources, routes),
                        routes -> ShelfPages.route(routes, rooms.shelf(), rooms.shelfImport(), rooms.household()),
                        routes -> new DeskPages(
                                        new DeskSources(
                                                rooms.sources().suppliers(),
                                                rooms.sources().rateCards(),
                                                rooms.sources().purchaseOffers(),
                                                rooms.shelf(),
                                                new DeskSources.Tables(rooms.cardTables(), rooms.supplierTables()),
                                                rooms.desk(),
                                                rooms.whereAreUnits(),
                                                rooms.household(),
                                                rooms.clock()),
                                        new Html(rooms.household()))
                                .route(routes),
                        routes -> new UnitPage(
                                        new UnitPage.Sources(
                                                rooms.unitArchive(),
                                                rooms.lettingIncome(),
                                                rooms.servicePlans(),
                                                rooms.household()),
                                        new Html(rooms.household()))
                                .route(routes)));
    }

    String address(String path) {
        return "http://127.0.0.1:" + server.port() + path;
    }

    @Override
    public void close() {
        server.close();
        rooms.close();
    }
}
