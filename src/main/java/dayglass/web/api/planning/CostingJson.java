package dayglass.web.api.planning;

import dayglass.base.Stored;
import dayglass.planning.Change;
import dayglass.planning.CompareCostings;
import dayglass.planning.KeptCosting;
import dayglass.planning.RunAgain;
import dayglass.wire.Json;
import java.util.List;
import java.util.Locale;

/** Costings on the wire. */
final class CostingJson {
    private CostingJson() {}

    /** A new costing: the answer itself, with what identifies it. */
    static Json.Obj answered(Stored<KeptCosting.Id, KeptCosting> costing) {
        Json.Members members = Json.object();
        ((Json.Obj) costing.facts().answer().tree()).members().forEach(members::put);
        identify(members, costing.id(), costing.facts().summary());
        hashes(members, costing.facts());
        return members.build();
    }

    /** A kept costing: what was asked and what was answered. */
    static Json.Obj whole(Stored<KeptCosting.Id, KeptCosting> costing) {
        Json.Members members = Json.object();
        summary(members, costing.id(), costing.facts().summary());
        hashes(members, costing.facts());
        return members.put("request", costing.facts().request().tree())
                .put("answer", costing.facts().answer().tree())
                .build();
    }

    static Json.Obj listed(Stored<KeptCosting.Id, KeptCosting.Summary> costing) {
        Json.Members members = Json.object();
        summary(members, costing.id(), costing.facts());
        return members.build();
    }

    private static void summary(Json.Members members, KeptCosting.Id id, KeptCosting.Summary summary) {
        identify(members, id, summary);
        members.put("job", summary.jobName())
                .put("currency", summary.total().currency().code())
                .put("total", summary.total().amount())
                .put("optimal", summary.optimal());
    }

    private static void identify(Json.Members members, KeptCosting.Id id, KeptCosting.Summary summary) {
        members.put("id", id.number());
        summary.job().ifPresent(job -> members.put("jobId", job.number()));
        members.put("createdAt", summary.createdAt().toString()).put("engineVersion", summary.engineVersion());
        summary.timeLimitSeconds().ifPresent(seconds -> members.put("timeLimitSeconds", seconds));
    }

    private static void hashes(Json.Members members, KeptCosting costing) {
        members.put("requestSha256", costing.request().sha256())
                .put("answerSha256", costing.answer().sha256());
    }

    static Json.Obj rerun(KeptCosting.Id id, RunAgain.Rerun rerun) {
        Json.Members members = Json.object()
                .put("costingId", id.number())
                .put("engineVersion", rerun.engineVersion())
                .put("currency", rerun.earlier().total().currency().code())
                .put("earlierTotal", rerun.earlier().total().amount())
                .put("earlierOptimal", rerun.earlier().optimal());
        rerun.costing()
                .fold(
                        planned -> members.put("total", planned.answer().total().amount())
                                .put("optimal", planned.answer().optimal()),
                        impossible -> members.put("total", Json.nothing()).put("optimal", false),
                        outOfTime -> members.put("total", Json.nothing()).put("optimal", false));
        return members.put("sameTotal", rerun.sameTotal()).build();
    }

    static Json.Obj comparison(
            Stored<KeptCosting.Id, KeptCosting> one,
            Stored<KeptCosting.Id, KeptCosting> other,
            CompareCostings.Differences differences) {
        return Json.object()
                .put("costing", side(one))
                .put("with", side(other))
                .put("request", changes(differences.request()))
                .put("answer", changes(differences.answer()))
                .build();
    }

    private static Json side(Stored<KeptCosting.Id, KeptCosting> costing) {
        return listed(
                new Stored<>(costing.id(), costing.version(), costing.facts().summary()));
    }

    private static Json changes(List<Change> changes) {
        return Json.list(changes.stream().map(CostingJson::change).toList());
    }

    private static Json.Obj change(Change change) {
        Json.Members members = Json.object()
                .put("subject", change.subject().name().toLowerCase(Locale.ROOT))
                .put("name", change.name());
        if (!change.part().isEmpty()) {
            members.put("part", change.part());
        }
        change.before().ifPresent(before -> members.put("before", before));
        change.after().ifPresent(after -> members.put("after", after));
        return members.build();
    }
}
