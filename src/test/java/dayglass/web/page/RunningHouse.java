package dayglass.web.page;

import dayglass.job.Jobs;
import dayglass.planning.CopyJob;
import dayglass.planning.Costings;
import dayglass.planning.Engine;
import dayglass.planning.ImportJob;
import dayglass.planning.MakeCosting;
import dayglass.planning.OptionSources;
import dayglass.planning.ResolveJob;
import dayglass.storage.Database;
import dayglass.storage.catalogue.JooqPurchaseOffers;
import dayglass.storage.catalogue.JooqRateCards;
import dayglass.storage.catalogue.JooqSuppliers;
import dayglass.storage.inventory.JooqOwnedUnits;
import dayglass.storage.job.JooqJobs;
import dayglass.storage.planning.JooqCostings;
import dayglass.web.WebServer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The pages over a real server and a real database. */
final class RunningHouse implements AutoCloseable {
    private final Database database;
    private final Jobs jobs;
    private final Costings costings;
    private final WebServer server;

    RunningHouse(Path folder) {
        this(folder, UnaryOperator.identity());
    }

    /** @param pace what stands between the pages and the engine */
    RunningHouse(Path folder, UnaryOperator<PageSources.JobCosting> pace) {
        Clock clock = Clock.systemUTC();
        database = Database.open(folder.resolve("house.db"));
        jobs = new JooqJobs(database);
        costings = new JooqCostings(database);
        OptionSources options = new OptionSources(
                new JooqSuppliers(database),
                new JooqRateCards(database),
                new JooqPurchaseOffers(database),
                new JooqOwnedUnits(database));
        ResolveJob resolveJob = new ResolveJob(options, clock);
        MakeCosting makeCosting = new MakeCosting(jobs, resolveJob, costings, new Engine("test", clock));
        PageSources sources = new PageSources(
                jobs,
                options,
                costings,
                resolveJob,
                new CopyJob(jobs, database),
                new ImportJob(jobs, options, database),
                pace.apply((job, stop) -> makeCosting.ofJob(job, Optional.empty(), stop)),
                database,
                clock);
        server = WebServer.start(
                new WebServer.Binding(WebServer.Binding.LOOPBACK, 0), List.of(routes -> Pages.route(routes, sources)));
    }

    String address(String path) {
        return "http://127.0.0.1:" + server.port() + path;
    }

    @Override
    public void close() {
        server.close();
        database.close();
    }
}
