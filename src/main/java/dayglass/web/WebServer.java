package dayglass.web;

import dayglass.web.api.inventory.condition.SentPictures;
import dayglass.web.error.Errors;
import dayglass.wire.JsonText;
import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import jakarta.servlet.DispatcherType;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Consumer;

/** The HTTP server: bound to one address, guarded against other sites, and stopped without cutting answers off. */
public final class WebServer implements AutoCloseable {
    private static final int STOP_TIMEOUT_MS = 5_000;

    private final Javalin javalin;

    private WebServer(Javalin javalin) {
        this.javalin = javalin;
    }

    /**
     * Where to listen.
     *
     * @param host the address to bind to; 127.0.0.1 lets nobody in but this machine
     * @param port 0 for any that is free
     */
    public record Binding(String host, int port) {
        /** This machine alone. */
        public static final String LOOPBACK = "127.0.0.1";
    }

    /**
     * Starts to listen.
     *
     * @param routes each adds the addresses that it answers
     * @throws io.javalin.util.JavalinBindException where the address or port cannot be had
     */
    public static WebServer start(Binding binding, List<Consumer<RoutesConfig>> routes) {
        Javalin javalin = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.http.prefer405over404 = true;
            config.router.ignoreTrailingSlashes = false;
            config.http.maxRequestSize = JsonText.MOST_BYTES;
            SentPictures.limit(config.jetty.multipartConfig);
            config.jetty.host = binding.host();
            config.jetty.port = binding.port();
            config.jetty.modifyServer(server -> server.setStopTimeout(STOP_TIMEOUT_MS));
            config.jetty.modifyServletContextHandler(
                    handler -> handler.addFilter(new HeadAsGet(), "/*", EnumSet.of(DispatcherType.REQUEST)));
            config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
            Errors.configure(config);
            config.routes.before(new Doorkeeper(binding.host()));
            routes.forEach(each -> each.accept(config.routes));
        });
        return new WebServer(javalin.start());
    }

    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
