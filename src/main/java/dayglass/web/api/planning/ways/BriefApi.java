package dayglass.web.api.planning.ways;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.job.Brief;
import dayglass.job.Briefs;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.shelf.BriefJson;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;

/** {@code /api/jobs/{id}/brief}: at version 0 there is none yet. */
public final class BriefApi {
    private static final String PATH = "/api/jobs/{id}/brief";

    private final Jobs jobs;
    private final Briefs briefs;

    public BriefApi(Jobs jobs, Briefs briefs) {
        this.jobs = jobs;
        this.briefs = briefs;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(PATH, this::read);
        routes.put(PATH, this::change);
    }

    private Job.Id job(Context ctx) {
        return Requests.find(ctx, jobs, Job.Id::new, "job").id();
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = job(ctx);
        show(ctx, job, briefs.of(job));
    }

    private void change(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = job(ctx);
        IfMatch ifMatch = IfMatch.of(ctx);
        Brief brief = Requests.body(ctx, BriefJson.reader(job));
        Optional<Stored<Job.Id, Brief>> current = briefs.of(job);
        if (!ifMatch.matches(version(current))) {
            throw stale(job, current);
        }
        Stored<Job.Id, Brief> kept = briefs.keep(new Stored<>(job, version(current), brief))
                .fold(stored -> stored, problem -> {
                    throw problem.code() == Problem.Code.STALE ? stale(job, briefs.of(job)) : Refusal.of(problem);
                });
        show(ctx, job, Optional.of(kept));
    }

    private static long version(Optional<Stored<Job.Id, Brief>> brief) {
        return brief.map(Stored::version).orElse(0L);
    }

    private static void show(Context ctx, Job.Id job, Optional<Stored<Job.Id, Brief>> brief) {
        ctx.header("ETag", IfMatch.tag(version(brief)));
        Replies.json(ctx, show(job, brief));
    }

    private static Json.Obj show(Job.Id job, Optional<Stored<Job.Id, Brief>> brief) {
        Json.Members members = Json.object().put("jobId", job.number()).put("version", version(brief));
        brief.ifPresent(stored -> BriefJson.write(members, stored.facts()));
        return members.build();
    }

    private static Refusal stale(Job.Id job, Optional<Stored<Job.Id, Brief>> current) {
        return IfMatch.stale("The brief of this job is", version(current), show(job, current));
    }
}
