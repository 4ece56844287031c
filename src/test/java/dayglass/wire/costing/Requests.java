package dayglass.wire.costing;

import dayglass.base.Fault;
import dayglass.cost.plan.Question;
import dayglass.wire.Checked;
import dayglass.wire.Json;
import dayglass.wire.JsonText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Costing requests for tests, and what the reader says of them. */
final class Requests {
    private static final Path EXAMPLES = Path.of("src/test/resources/dayglass/cost/examples");

    private Requests() {}

    /** The names of the examples that begin so, without {@code .json}. */
    static List<String> examples(String prefixPattern) {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.matches(prefixPattern + ".*\\.json") && !name.endsWith(".expected.json"))
                    .map(name -> name.substring(0, name.length() - ".json".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] example(String name) {
        try {
            return Files.readAllBytes(EXAMPLES.resolve(name + ".json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Json json(byte[] text) {
        return good(JsonText.parse(text));
    }

    static Json.Arr list(Json.Obj object, String name) {
        return (Json.Arr) Objects.requireNonNull(object.members().get(name));
    }

    static Question question(byte[] text) {
        return good(CostingRequestReader.read(text));
    }

    static <T> T good(Checked<T> checked) {
        return checked.fold(value -> value, faults -> {
            throw new AssertionError(faults.toString());
        });
    }

    static Set<String> pointers(String text) {
        return pointers(text.getBytes(StandardCharsets.UTF_8));
    }

    static Set<String> pointers(byte[] text) {
        return new TreeSet<>(faults(text).stream().map(Fault::pointer).toList());
    }

    static List<Fault> faults(byte[] text) {
        return CostingRequestReader.read(text).fold(question -> List.of(), faults -> faults);
    }
}
