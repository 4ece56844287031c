package dayglass.web.api.job;

import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.planning.CopyJob;
import dayglass.planning.ImportJob;
import dayglass.planning.ResolveJob;
import dayglass.web.api.Replies;
import dayglass.web.api.Representation;
import dayglass.web.api.Requests;
import dayglass.web.api.Resource;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.CostingRequestReader;
import dayglass.wire.costing.CostingRequestWriter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/jobs}, with copies, imports and the request that a job resolves to. */
public final class JobApi {
    private static final String PATH = "/api/jobs";

    private final Resource<Job.Id, Job> jobs;
    private final CopyJob copyJob;
    private final ImportJob importJob;
    private final ResolveJob resolveJob;

    public JobApi(Jobs jobs, CopyJob copyJob, ImportJob importJob, ResolveJob resolveJob) {
        this.jobs =
                new Resource<>(new Representation<>(PATH, "job", jobs, Job.Id::new, JobJson.reader(), JobJson::write));
        this.copyJob = copyJob;
        this.importJob = importJob;
        this.resolveJob = resolveJob;
    }

    public void addTo(RoutesConfig routes) {
        routes.post(PATH + "/import", this::importRequest);
        routes.post(PATH + "/{id}/copy", this::copy);
        routes.get(PATH + "/{id}/request", this::request);
        jobs.addTo(routes);
    }

    private void importRequest(Context ctx) {
        Requests.onlyParameters(ctx);
        jobs.created(ctx, importJob.importFrom(Requests.body(ctx, CostingRequestReader.request())));
    }

    private void copy(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Job.Id, Job> job = jobs.find(ctx);
        jobs.created(ctx, copyJob.copy(job.id(), Requests.body(ctx, nameOfCopy())));
    }

    private static Reader<String> nameOfCopy() {
        return Fields.object(fields -> {
            Read<String> name = fields.required("name", Readers.name());
            return fields.build(name::get);
        });
    }

    private void request(Context ctx) {
        Requests.onlyParameters(ctx);
        Job job = jobs.find(ctx).facts();
        Replies.json(ctx, CostingRequestWriter.write(Refusal.require(resolveJob.resolve(job))));
    }
}
