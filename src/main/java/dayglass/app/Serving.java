package dayglass.app;

import dayglass.web.WebServer;
import java.net.BindException;
import java.net.UnknownHostException;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;

/** The server between its start and the signal that stops it. */
final class Serving {
    private static final int LAST_ANSWERS_MS = 10_000;

    private final Terminal terminal;
    private final String host;

    Serving(Terminal terminal, String host) {
        this.terminal = terminal;
        this.host = host;
    }

    /**
     * Serves until the process is told to end.
     *
     * @param port 0 for any that is free
     * @param started gets the address, without a slash at its end
     * @return whether the port could be had
     */
    boolean run(Rooms rooms, int port, Consumer<String> started) {
        try (WebServer server = WebServer.start(new WebServer.Binding(host, port), ServerRoutes.of(rooms))) {
            started.accept("http://" + shownHost() + ":" + server.port());
            terminal.out().flush();
            awaitSignal(rooms);
            return true;
        } catch (RuntimeException failure) {
            if (!isBindFailure(failure)) {
                throw failure;
            }
            return false;
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
