package dayglass.web.api.planning;

import dayglass.base.Outcome;
import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.planning.CompareCostings;
import dayglass.planning.Costings;
import dayglass.planning.Engine;
import dayglass.planning.KeptCosting;
import dayglass.planning.MakeCosting;
import dayglass.planning.Priced;
import dayglass.planning.RunAgain;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import dayglass.wire.costing.CostingProblems;
import dayglass.wire.costing.CostingRequestReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** {@code /api/costings}, and the costings of a job. */
public final class CostingApi {
    private static final String PATH = "/api/costings";

    private final MakeCosting makeCosting;
    private final RunAgain runAgain;
    private final Costings costings;

    public CostingApi(MakeCosting makeCosting, RunAgain runAgain, Costings costings) {
        this.makeCosting = makeCosting;
        this.runAgain = runAgain;
        this.costings = costings;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/jobs/{id}/costings", this::costJob);
        routes.post(PATH, this::costRequest);
        routes.get(PATH, this::list);
        routes.get(PATH + "/{id}", this::read);
        routes.delete(PATH + "/{id}", this::remove);
        routes.post(PATH + "/{id}/run-again", this::rerun);
        routes.get(PATH + "/{id}/comparison", this::compare);
    }

    private void costJob(Context ctx) {
        Job.Id job = new Job.Id(Requests.pathId(ctx));
        Optional<Integer> timeLimit = timeLimit(ctx);
        Requests.noFacts(ctx);
        answer(ctx, makeCosting.ofJob(job, timeLimit));
    }

    private void costRequest(Context ctx) {
        Optional<Integer> timeLimit = timeLimit(ctx);
        answer(ctx, makeCosting.ofQuestion(Requests.body(ctx, CostingRequestReader.request()), timeLimit));
    }

    private static Optional<Integer> timeLimit(Context ctx) {
        Requests.onlyParameters(ctx, "timeLimit");
        OptionalLong seconds = Requests.number(ctx, "timeLimit", Engine.MOST_SECONDS);
        return seconds.isPresent() ? Optional.of((int) seconds.getAsLong()) : Optional.empty();
    }

    private static void answer(Context ctx, Outcome<Priced> outcome) {
        Stored<KeptCosting.Id, KeptCosting> kept = Refusal.require(outcome)
                .fold(
                        Priced.Kept::costing,
                        noPlan -> {
                            throw Refusal.of(CostingProblems.impossible(noPlan.why()));
                        },
                        outOfTime -> {
                            throw Refusal.of(CostingProblems.outOfTime());
                        });
        ctx.header("ETag", IfMatch.tag(kept.version()));
        Replies.created(ctx, PATH + "/" + kept.id().number(), CostingJson.answered(kept));
    }

    private void list(Context ctx) {
        Requests.onlyParameters(ctx, "limit", "after", "job");
        Replies.Slice slice = Replies.Slice.of(ctx);
        OptionalLong job = Requests.number(ctx, "job", Long.MAX_VALUE);
        List<Stored<KeptCosting.Id, KeptCosting.Summary>> fetched = costings.list(
                job.isPresent() ? Optional.of(new Job.Id(job.getAsLong())) : Optional.empty(),
                Optional.of(new KeptCosting.Id(slice.after())),
                slice.toFetch());
        String query = job.isPresent() ? "job=" + job.getAsLong() + "&" : "";
        Replies.json(ctx, slice.page(PATH, query, fetched, stored -> stored.id().number(), CostingJson::listed));
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<KeptCosting.Id, KeptCosting> costing = find(Requests.pathId(ctx));
        ctx.header("ETag", IfMatch.tag(costing.version()));
        Replies.json(ctx, CostingJson.whole(costing));
    }

    /** It never changes, yet its version is asked for as everywhere: whoever removes it has seen it. */
    private void remove(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<KeptCosting.Id, KeptCosting> costing = find(Requests.pathId(ctx));
        if (!IfMatch.of(ctx).matches(costing.version())) {
            throw IfMatch.stale("This costing is", costing.version(), CostingJson.whole(costing));
        }
        Refusal.require(costings.remove(costing.id()));
        ctx.status(204);
    }

    private void rerun(Context ctx) {
        Requests.onlyParameters(ctx);
        Stored<KeptCosting.Id, KeptCosting> costing = find(Requests.pathId(ctx));
        Requests.noFacts(ctx);
        Replies.json(ctx, CostingJson.rerun(costing.id(), Refusal.require(runAgain.of(costing.facts()))));
    }

    private void compare(Context ctx) {
        Requests.onlyParameters(ctx, "with");
        Stored<KeptCosting.Id, KeptCosting> one = find(Requests.pathId(ctx));
        Stored<KeptCosting.Id, KeptCosting> other = find(Requests.number(ctx, "with", Long.MAX_VALUE)
                .orElseThrow(() -> Requests.badParameter("with", "say which costing to compare it with, by its id")));
        Replies.json(ctx, CostingJson.comparison(one, other, CompareCostings.between(one.facts(), other.facts())));
    }

    private Stored<KeptCosting.Id, KeptCosting> find(long id) {
        return costings.find(new KeptCosting.Id(id))
                .orElseThrow(() -> new Refusal(ProblemKind.NOT_FOUND, "There is no costing with the id " + id + "."));
    }
}
