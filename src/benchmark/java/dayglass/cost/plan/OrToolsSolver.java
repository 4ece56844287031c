package dayglass.cost.plan;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolver.ResultStatus;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One of the general solvers that come with OR-Tools; only the profile {@code benchmark} compiles it. */
public final class OrToolsSolver implements GeneralSolver {
    private static final int THREADS = 2;

    private final String name;

    /**
     * The solver of a name.
     *
     * @param name as OR-Tools spells it, e.g. {@code SCIP}, {@code SAT}, {@code CBC}
     */
    public OrToolsSolver(String name) {
        Loader.loadNativeLibraries();
        this.name = name;
    }

    @Override
    public String description() {
        MPSolver solver = MPSolver.createSolver(name);
        // OR-Tools' interface to HiGHS gives another solver's name; the version is what HiGHS prints of itself.
        String version = name.equals("HIGHS") ? "HiGHS 1.12.0" : solver.solverVersion();
        return version + " in OR-Tools 9.15.6755, " + (threaded() ? THREADS + " threads" : "1 thread");
    }

    /** Its build of CBC has one thread and complains of a number. */
    private boolean threaded() {
        return !name.equals("CBC");
    }

    @Override
    public PeriodModel.Form form() {
        return PeriodModel.Form.BALANCED;
    }

    @Override
    public Outcome solve(PeriodModel model, Duration limit, double gap) {
        MPSolver solver = MPSolver.createSolver(name);
        try {
            return solve(solver, model, limit, gap);
        } finally {
            solver.delete();
        }
    }

    private Outcome solve(MPSolver solver, PeriodModel model, Duration limit, double gap) {
        List<MPVariable> variables = new ArrayList<>();
        for (PeriodModel.Column column : model.columns()) {
            boolean whole = column.whole() || name.equals("SAT");
            variables.add(solver.makeVar(0, column.most(), whole, ""));
            solver.objective().setCoefficient(variables.get(variables.size() - 1), (double) column.cost());
        }
        solver.objective().setMinimization();
        for (PeriodModel.Row row : model.rows()) {
            MPConstraint constraint = solver.makeConstraint(
                    row.least().map(Long::doubleValue).orElse(-MPSolver.infinity()),
                    row.most().map(Long::doubleValue).orElse(MPSolver.infinity()),
                    "");
            row.terms()
                    .forEach(term -> constraint.setCoefficient(variables.get(term.column()), (double) term.factor()));
        }
        solver.setTimeLimit(limit.toMillis());
        if (threaded()) {
            solver.setNumThreads(THREADS);
        }
        MPSolverParameters parameters = new MPSolverParameters();
        parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, gap);
        ResultStatus status = status(solver, parameters);
        if (status == ResultStatus.INFEASIBLE) {
            return new Outcome(Status.INFEASIBLE, Optional.empty());
        }
        if (status != ResultStatus.OPTIMAL && status != ResultStatus.FEASIBLE) {
            return new Outcome(Status.NOT_SOLVED, Optional.empty());
        }
        Optional<Long> total = GeneralSolver.total(
                model, column -> Math.round(variables.get(column).solutionValue()));
        boolean solved = status == ResultStatus.OPTIMAL && total.isPresent();
        return new Outcome(solved ? Status.SOLVED : Status.NOT_SOLVED, total);
    }

    private static ResultStatus status(MPSolver solver, MPSolverParameters parameters) {
        try {
            return solver.solve(parameters);
        } catch (IllegalArgumentException unknownStatus) {
            // A run that reached its limit with nothing in hand can end in a status that the interface has no name for.
            return ResultStatus.NOT_SOLVED;
        }
    }
}
