package dayglass.web.page;

import io.javalin.config.JavalinConfig;
import io.javalin.http.staticfiles.Location;

/** Every page and what belongs to them. */
public final class Pages {
    private Pages() {}

    public static void configure(JavalinConfig config, PageSources sources) {
        Html html = new Html();
        RunPages runs = new RunPages(sources, html);
        config.staticFiles.add(files -> {
            files.hostedPath = "/static";
            files.directory = "/static";
            files.location = Location.CLASSPATH;
        });
        new JobsPages(sources, html).route(config.routes);
        new JobPages(sources, html, runs).route(config.routes);
        runs.route(config.routes);
        new CostingPages(sources, html).route(config.routes);
        new ShelfPages(sources, html).route(config.routes);
        new DeskPages(sources, html).route(config.routes);
    }
}
