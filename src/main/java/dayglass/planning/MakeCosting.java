package dayglass.planning;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.cost.plan.Answer;
import dayglass.cost.plan.Question;
import dayglass.cost.plan.StopSignal;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.wire.costing.AnswerWriter;
import dayglass.wire.costing.CostingRequestWriter;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** Costs a job, or a question that stands by itself, and keeps what came of it. */
public final class MakeCosting {
    private final Jobs jobs;
    private final ResolveJob resolveJob;
    private final Costings costings;
    private final Engine engine;

    public MakeCosting(Jobs jobs, ResolveJob resolveJob, Costings costings, Engine engine) {
        this.jobs = jobs;
        this.resolveJob = resolveJob;
        this.costings = costings;
        this.engine = engine;
    }

    /** Costs the job as it is now. */
    public Outcome<Priced> ofJob(Job.Id id, Optional<Integer> timeLimitSeconds) {
        return ofJob(id, timeLimitSeconds, StopSignal.NEVER);
    }

    /** Costs the job as it is now, until its caller wants no more than the best found so far. */
    public Outcome<Priced> ofJob(Job.Id id, Optional<Integer> timeLimitSeconds, StopSignal stop) {
        Optional<Job> job = jobs.find(id).map(Stored::facts);
        if (job.isEmpty()) {
            return Outcome.refused(Problem.Code.NOT_FOUND, "There is no job with the id " + id.number() + ".");
        }
        return resolveJob.resolve(job.get()).then(question -> make(Optional.of(id), question, timeLimitSeconds, stop));
    }

    public Outcome<Priced> ofQuestion(Question question, Optional<Integer> timeLimitSeconds) {
        return ofQuestion(question, timeLimitSeconds, StopSignal.NEVER);
    }

    /** Costs the question, until its caller wants no more than the best found so far. */
    public Outcome<Priced> ofQuestion(Question question, Optional<Integer> timeLimitSeconds, StopSignal stop) {
        return make(Optional.empty(), question, timeLimitSeconds, stop);
    }

    private Outcome<Priced> make(
            Optional<Job.Id> job, Question question, Optional<Integer> timeLimitSeconds, StopSignal stop) {
        return engine.solve(question, timeLimitSeconds, stop)
                .map(costing -> costing.fold(
                        planned -> new Priced.Kept(keep(job, question, planned.answer(), timeLimitSeconds)),
                        Priced.NoPlan::new,
                        outOfTime -> new Priced.OutOfTime()));
    }

    private Stored<KeptCosting.Id, KeptCosting> keep(
            Optional<Job.Id> job, Question question, Answer answer, Optional<Integer> timeLimitSeconds) {
        KeptCosting costing = new KeptCosting(
                new KeptCosting.Summary(
                        job,
                        question.job(),
                        engine.clock().instant().truncatedTo(ChronoUnit.MILLIS),
                        engine.version(),
                        timeLimitSeconds,
                        answer.total(),
                        answer.optimal()),
                KeptCosting.Document.of(CostingRequestWriter.write(question)),
                KeptCosting.Document.of(AnswerWriter.write(answer)));
        return new Stored<>(costings.add(costing), 1, costing);
    }
}
