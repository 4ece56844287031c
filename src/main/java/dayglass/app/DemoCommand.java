package dayglass.app;

import dayglass.app.demo.DemoBooks;
import dayglass.app.demo.DemoDesk;
import dayglass.app.demo.DemoHouse;
import dayglass.app.demo.DemoWays;
import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.planning.KeptCosting;
import dayglass.planning.Priced;
import dayglass.web.WebServer;
import dayglass.wire.costing.AnswerReader;
import dayglass.wire.costing.CostingRequestReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code demo}: the main job on an invented one, then the pages. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Costs the demo job, prints its plan and serves the pages until Ctrl-C.",
            "",
            "The first run brings in the house and the job as imports would; what you change stays until you delete the"
                    + " database."
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:it was stopped", "1:it could not start", "2:the command is faulty"},
        footerHeading = "%nExample:%n",
        footer = "  dayglass demo --port 8090")
final class DemoCommand implements Callable<Integer> {
    private static final String JOB = "/demo-data/the-salt-ferry.json";

    private final Terminal terminal;

    @Option(
            names = "--db",
            paramLabel = "FILE",
            defaultValue = "target/demo/dayglass.db",
            description = "the demo's database (default: ${DEFAULT-VALUE})")
    private Path file = Path.of("target/demo/dayglass.db");

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "" + ServeCommand.USUAL_PORT,
            description = "the port; where it is taken, any that is free (default: ${DEFAULT-VALUE})")
    private int port = ServeCommand.USUAL_PORT;

    DemoCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return OpenRooms.lend(file, terminal, this::costAndServe);
    }

    private int costAndServe(Rooms rooms) {
        boolean isNew = rooms.jobs().list(Optional.empty(), 1).isEmpty();
        Optional<Long> costing = job(rooms)
                .then(job -> rooms.makeCosting().ofJob(job, Optional.empty()).map(priced -> {
                    if (isNew) {
                        keepBooks(rooms, job, priced);
                    }
                    return priced;
                }))
                .fold(this::show, this::refused);
        return costing.isEmpty() ? CostCommand.FAILED : serve(rooms, costing.get());
    }

    /** The first job there is, or the demo's own where there is none yet. */
    static Outcome<Job.Id> job(Rooms rooms) {
        List<Stored<Job.Id, Job>> jobs = rooms.jobs().list(Optional.empty(), 1);
        return jobs.isEmpty()
                ? rooms.transactions().atomically(() -> begun(rooms))
                : Outcome.done(jobs.get(0).id());
    }

    private static Outcome<Job.Id> begun(Rooms rooms) {
        boolean emptyHouse = rooms.shelf().units().list(Optional.empty(), 1).isEmpty();
        if (emptyHouse) {
            DemoHouse.fill(new DemoHouse.Into(
                    rooms.household(),
                    rooms.shelf(),
                    rooms.shelfImport(),
                    rooms.sources().suppliers(),
                    rooms.cardTables(),
                    rooms.whereAreUnits(),
                    rooms.notebook().noteCondition(),
                    rooms.servicePlans()));
            DemoDesk.fill(rooms.desk(), rooms.shelf());
        }
        return rooms.importJob()
                .importFrom(CostingRequestReader.read(request()).fold(question -> question, faults -> {
                    throw new IllegalStateException("the demo's own request is faulty: " + faults);
                }))
                .map(job -> {
                    if (emptyHouse) {
                        DemoWays.fill(
                                new DemoWays.Into(rooms.sources(), rooms.shelf(), rooms.briefs(), rooms.ways()), job);
                    }
                    return job.id();
                });
    }

    /** Of the job as it was first costed; later costings change nothing in them. */
    private static void keepBooks(Rooms rooms, Job.Id job, Priced priced) {
        if (priced instanceof Priced.Kept kept) {
            rooms.transactions().atomically(() -> {
                DemoBooks.fill(rooms.books(), rooms.costCodes(), job, kept.costing());
                return Outcome.done(true);
            });
        }
    }

    private static byte[] request() {
        try (InputStream in = DemoCommand.class.getResourceAsStream(JOB)) {
            if (in == null) {
                throw new IllegalStateException(JOB + " is not in the jar");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Optional<Long> show(Priced priced) {
        if (priced instanceof Priced.Kept kept) {
            KeptCosting costing = kept.costing().facts();
            terminal.out()
                    .print(CostTable.of(
                            costing.question(),
                            AnswerReader.read(costing.answer().json())));
            return Optional.of(kept.costing().id().number());
        }
        terminal.err()
                .println("As it is now, the job in " + file + " has no plan. Delete that file to begin the demo anew.");
        return Optional.empty();
    }

    private Optional<Long> refused(Problem problem) {
        terminal.err().println(problem.detail());
        return Optional.empty();
    }

    private int serve(Rooms rooms, long costing) {
        Serving serving = new Serving(terminal, rooms, WebServer.Binding.LOOPBACK);
        try {
            return serving.untilStopped(port, address -> sayWhere(address, costing));
        } catch (Serving.PortTaken taken) {
            return serving.untilStopped(0, address -> sayWhere(address, costing));
        }
    }

    private void sayWhere(String address, long costing) {
        terminal.out().println();
        terminal.out().println("The same as a page: " + address + "/costings/" + costing);
        terminal.out().println("All jobs: " + address + "/   The REST interface: " + address + "/reference");
        terminal.out().println("Ctrl-C stops it.");
    }
}
