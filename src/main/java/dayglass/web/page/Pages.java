package dayglass.web.page;

import io.javalin.config.RoutesConfig;

/** Every page and what belongs to them. */
public final class Pages {
    private Pages() {}

    public static void route(RoutesConfig routes, PageSources sources) {
        Html html = new Html(sources.household());
        RunPages runs = new RunPages(sources, html);
        new Assets().route(routes);
        new ErrorPages(html).route(routes);
        new JobsPages(sources, html).route(routes);
        new JobPages(sources, html, runs).route(routes);
        runs.route(routes);
        new CostingPages(sources, html).route(routes);
    }
}
