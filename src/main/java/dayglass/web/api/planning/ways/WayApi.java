package dayglass.web.api.planning.ways;

import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.job.Way;
import dayglass.job.Ways;
import dayglass.shelf.WayJson;
import dayglass.web.api.Replies;
import dayglass.web.api.Representation;
import dayglass.web.api.Requests;
import dayglass.web.api.Resource;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/ways}, and those of a job. */
public final class WayApi {
    private final Jobs jobs;
    private final Ways ways;

    public WayApi(Jobs jobs, Ways ways) {
        this.jobs = jobs;
        this.ways = ways;
    }

    public void addTo(RoutesConfig routes) {
        new Resource<>(new Representation<>("/api/ways", "way", ways, Way.Id::new, WayJson.reader(), WayJson::write))
                .addTo(routes);
        routes.get("/api/jobs/{id}/ways", this::ofJob);
    }

    private void ofJob(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = Requests.find(ctx, jobs, Job.Id::new, "job").id();
        Replies.json(
                ctx,
                Json.object()
                        .put(
                                "items",
                                Json.list(
                                        ways.of(job).stream().map(WayApi::show).toList()))
                        .build());
    }

    private static Json show(Stored<Way.Id, Way> way) {
        Json.Members members = Json.object().put("id", way.id().number()).put("version", way.version());
        WayJson.write(members, way.facts());
        return members.build();
    }
}
