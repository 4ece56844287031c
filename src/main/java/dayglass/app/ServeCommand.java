package dayglass.app;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code serve}: pages and REST until Ctrl-C. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Serves the pages and the REST interface until Ctrl-C.",
            "",
            "By default only this machine can reach it, and no password is asked. The REST interface is described at "
                    + "/reference."
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {"0:it was stopped", "1:it could not start", "2:the command is faulty"},
        footerHeading = "%nExamples:%n",
        footer = {"  dayglass serve", "  dayglass serve --db house.db --port 8090"})
final class ServeCommand implements Callable<Integer> {
    static final int USUAL_PORT = 8080;

    private static final String LOOPBACK = "127.0.0.1";
    private static final int MOST_PORT = 65_535;

    private final Terminal terminal;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DatabaseOption database = new DatabaseOption();

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "" + USUAL_PORT,
            description = "the port; 0 for any that is free (default: ${DEFAULT-VALUE})")
    private int port = USUAL_PORT;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = LOOPBACK,
            description = "the address to listen on (default: ${DEFAULT-VALUE}, this machine alone)")
    private String host = LOOPBACK;

    ServeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (port < 0 || port > MOST_PORT) {
            throw new ParameterException(spec.commandLine(), "--port takes a number from 0 to " + MOST_PORT);
        }
        return OpenRooms.lend(database.file(), terminal, this::serve);
    }

    private int serve(Rooms rooms) {
        try {
            return new Serving(terminal, rooms, host)
                    .untilStopped(
                            port,
                            address -> terminal.out()
                                    .println("Dayglass is at " + address
                                            + "/ and its reference at /reference. Ctrl-C stops it."));
        } catch (Serving.PortTaken taken) {
            terminal.err().println(taken.getMessage() + " Choose another with --port.");
            return CostCommand.FAILED;
        }
    }
}
