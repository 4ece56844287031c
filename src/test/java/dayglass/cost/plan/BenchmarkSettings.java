package dayglass.cost.plan;

import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the benchmark is asked to do.
 *
 * @param gap relative, at which a general solver may stop
 * @param mostColumns of the largest model that a general solver is given
 */
record BenchmarkSettings(
        List<String> shapes,
        List<String> solverNames,
        Duration limit,
        Duration engineLimit,
        double gap,
        int mostColumns) {

    BenchmarkSettings {
        shapes = List.copyOf(shapes);
        solverNames = List.copyOf(solverNames);
    }

    /** Reads {@code name=value} arguments. */
    static BenchmarkSettings of(String... arguments) {
        Map<String, String> values = new LinkedHashMap<>(Map.of(
                "shapes", "one60,one1100,8x90,12x180,16x366",
                "solvers", "ojalgo",
                "limit", "8",
                "engine-limit", "10",
                "gap", "1e-6",
                "most-columns", "60000"));
        for (String argument : arguments) {
            String[] sides = argument.split("=", 2);
            if (sides.length != 2 || values.replace(sides[0], sides[1]) == null) {
                throw new IllegalArgumentException(argument + " is none of " + values.keySet() + " with =value");
            }
        }
        return new BenchmarkSettings(
                List.of(get(values, "shapes").split(",", -1)),
                List.of(get(values, "solvers").split(",", -1)),
                Duration.ofSeconds(Long.parseLong(get(values, "limit"))),
                Duration.ofSeconds(Long.parseLong(get(values, "engine-limit"))),
                Double.parseDouble(get(values, "gap")),
                Integer.parseInt(get(values, "most-columns")));
    }

    private static String get(Map<String, String> values, String name) {
        return values.getOrDefault(name, "");
    }

    List<GeneralSolver> solvers() {
        List<GeneralSolver> solvers = new ArrayList<>();
        for (String name : solverNames) {
            if (name.equals("ojalgo")) {
                solvers.add(new OjalgoSolver());
            } else if (!name.equals("none")) {
                solvers.add(orTools(name));
            }
        }
        return solvers;
    }

    /** Found by name, since only the profile {@code benchmark} compiles it. */
    private static GeneralSolver orTools(String name) {
        try {
            return Class.forName("dayglass.cost.plan.OrToolsSolver")
                    .asSubclass(GeneralSolver.class)
                    .getConstructor(String.class)
                    .newInstance(name);
        } catch (ClassNotFoundException absent) {
            throw new IllegalArgumentException(name + " comes with OR-Tools: run Maven with -Pbenchmark", absent);
        } catch (NoSuchMethodException
                | InstantiationException
                | IllegalAccessException
                | InvocationTargetException broken) {
            throw new IllegalStateException("OrToolsSolver cannot be made for " + name, broken);
        }
    }
}
