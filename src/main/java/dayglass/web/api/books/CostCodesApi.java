package dayglass.web.api.books;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.books.CostCodes;
import dayglass.books.JobCodes;
import dayglass.books.JobCostCodes;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Reader;
import dayglass.wire.Readers;
import dayglass.wire.costing.CostingRequestReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.TreeMap;

/** {@code /api/jobs/{id}/cost-codes}: there from the first, with none at version 0. */
public final class CostCodesApi {
    private static final String PATH = "/api/jobs/{id}/cost-codes";
    private static final int MOST_CODES = CostingRequestReader.MOST_OPTIONS;

    private final Jobs jobs;
    private final JobCostCodes all;

    public CostCodesApi(Jobs jobs, JobCostCodes all) {
        this.jobs = jobs;
        this.all = all;
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
        show(ctx, all.of(job(ctx)));
    }

    private void change(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<Job.Id, JobCodes> current = all.of(job(ctx));
        IfMatch ifMatch = IfMatch.of(ctx);
        CostCodes codes = Requests.body(ctx, reader());
        if (!ifMatch.matches(current.version())) {
            throw stale(current);
        }
        show(
                ctx,
                all.keep(new Stored<>(current.id(), current.version(), new JobCodes(current.id(), codes)))
                        .fold(kept -> kept, problem -> {
                            throw problem.code() == Problem.Code.STALE
                                    ? stale(all.of(current.id()))
                                    : Refusal.of(problem);
                        }));
    }

    private static Reader<CostCodes> reader() {
        Reader<Map<String, String>> codes = Readers.words(Readers.text(CostCodes.LONGEST));
        return Fields.object(fields -> {
            Read<Map<String, String>> read = fields.required(
                    "codes",
                    (json, place) ->
                            json instanceof Json.Obj object && object.members().size() > MOST_CODES
                                    ? place.fault("has more than " + MOST_CODES + " options: leave some out")
                                    : codes.read(json, place));
            return fields.build(() -> new CostCodes(read.get()));
        });
    }

    private static void show(Context ctx, Stored<Job.Id, JobCodes> codes) {
        ctx.header("ETag", IfMatch.tag(codes.version()));
        Replies.json(ctx, show(codes));
    }

    private static Json.Obj show(Stored<Job.Id, JobCodes> stored) {
        Json.Members codes = Json.object();
        new TreeMap<>(stored.facts().codes().byOption()).forEach(codes::put);
        return Json.object()
                .put("jobId", stored.id().number())
                .put("version", stored.version())
                .put("codes", codes.build())
                .build();
    }

    private static Refusal stale(Stored<Job.Id, JobCodes> current) {
        return IfMatch.stale("The cost codes of this job are", current.version(), show(current));
    }
}
