package dayglass.app;

import dayglass.web.WebServer;
import java.net.BindException;
import java.net.UnknownHostException;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;

/** The server from its start to Ctrl-C. */
final class Serving {
    private final Terminal terminal;
    private final Rooms rooms;
    private final String host;

    Serving(Terminal terminal, Rooms rooms, String host) {
        this.terminal = terminal;
        this.rooms = rooms;
        this.host = host;
    }

    /** Nothing can listen there. */
    static final class PortTaken extends RuntimeException {
        private static final long serialVersionUID = 1;

        PortTaken(String message, Throwable cause) {
            super(message, cause);
        }

        @Override
        public String getMessage() {
            return String.valueOf(super.getMessage());
        }
    }

    /**
     * Serves until the process is told to stop.
     *
     * @param port 0 for any that is free
     * @param started gets the address, without a slash at its end
     * @throws PortTaken where the port cannot be had
     */
    int untilStopped(int port, Consumer<String> started) {
        try (WebServer server = start(port)) {
            CountDownLatch stopped = stopOnSignal(server);
            started.accept("http://" + shownHost() + ":" + server.port());
            terminal.out().flush();
            await(stopped);
            return 0;
        }
    }

    private static void await(CountDownLatch stopped) {
        try {
            stopped.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private WebServer start(int port) {
        try {
            return WebServer.start(new WebServer.Binding(host, port), ServerRoutes.of(rooms));
        } catch (RuntimeException failure) {
            if (!isBindFailure(failure)) {
                throw failure;
            }
            throw new PortTaken(
                    "Nothing can listen on port " + port + " of " + host + ": another program may have it.", failure);
        }
    }

    /** The signal ends the process once this returns, so everything is closed before. */
    private CountDownLatch stopOnSignal(WebServer server) {
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            rooms.engine().end();
                            server.close();
                            rooms.close();
                            stopped.countDown();
                        },
                        "stop"));
        return stopped;
    }

    private String shownHost() {
        return host.contains(":") && !host.startsWith("[") ? "[" + host + "]" : host;
    }

    private static boolean isBindFailure(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException
                    || cause instanceof UnknownHostException
                    || cause.getClass().getSimpleName().equals("JavalinBindException")) {
                return true;
            }
        }
        return false;
    }
}
