package dayglass.app;

import dayglass.web.WebServer;
import java.net.BindException;
import java.net.UnknownHostException;
import java.util.concurrent.CountDownLatch;

/** The server between its start and the signal that stops it. */
final class Serving {
    private static final int LAST_ANSWERS_MS = 10_000;

    private final Terminal terminal;
    private final String host;
    private final int port;

    Serving(Terminal terminal, String host, int port) {
        this.terminal = terminal;
        this.host = host;
        this.port = port;
    }

    /**
     * Serves until the process is told to end.
     *
     * @return the exit status
     */
    int run(Rooms rooms) {
        try (WebServer server = WebServer.start(new WebServer.Binding(host, port), ServerRoutes.of(rooms))) {
            terminal.out()
                    .println("Dayglass is at http://" + shownHost() + ":" + server.port()
                            + "/ and its reference at /reference. Ctrl-C stops it.");
            awaitSignal(rooms);
            return 0;
        } catch (RuntimeException failure) {
            if (!isBindFailure(failure)) {
                throw failure;
            }
            terminal.err()
                    .println("Nothing can listen on port " + port + " of " + host
                            + ": another program may have it. Choose another with --port.");
            return CostCommand.FAILED;
        }
    }

    /** The process ends once the hook returns, so the hook waits until everything is closed. */
    private static void awaitSignal(Rooms rooms) {
        CountDownLatch signal = new CountDownLatch(1);
        Thread serving = Thread.currentThread();
        Thread hook = new Thread(
                () -> {
                    rooms.engine().end();
                    signal.countDown();
                    try {
                        serving.join(LAST_ANSWERS_MS);
                    } catch (InterruptedException interrupted) {
                        Thread.currentThread().interrupt();
                    }
                },
                "stop");
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            signal.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private String shownHost() {
        return host.contains(":") && !host.startsWith("[") ? "[" + host + "]" : host;
    }

    private static boolean isBindFailure(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException || cause instanceof UnknownHostException) {
                return true;
            }
        }
        return failure instanceof io.javalin.util.JavalinBindException;
    }
}
