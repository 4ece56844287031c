package dayglass.app;

import dayglass.base.Fault;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.Problem;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/** How a command answers a request in a file: in words, or as JSON and nothing else on standard output. */
final class CommandReply {
    private final Terminal terminal;
    private final boolean json;

    CommandReply(Terminal terminal, boolean json) {
        this.terminal = terminal;
        this.json = json;
    }

    /**
     * Reads the file and answers it; what cannot be read and what fails is answered too.
     *
     * @param file a path, or - for standard input
     * @return the exit status
     */
    int to(String file, ToIntFunction<byte[]> answer) {
        try {
            return RequestFile.read(file, terminal.in()).fold(answer::applyAsInt, this::unreadable);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return failed(e);
        }
    }

    /** The result: JSON or words, on standard output either way. */
    void print(Json result, Supplier<String> words) {
        write(json ? JsonPrint.pretty(result) : words.get());
    }

    /** A refusal: JSON on standard output, or words on standard error. */
    void refuse(Problem problem, String words) {
        if (json) {
            write(JsonPrint.pretty(problem.toJson()));
        } else {
            terminal.err().print(words.endsWith("\n") ? words : words + "\n");
            terminal.err().flush();
        }
    }

    int faulty(byte[] text, List<Fault> faults) {
        refuse(Problem.faulty(faults), RefusalText.faulty(text, faults));
        return CostCommand.FAULTY;
    }

    private int unreadable(List<Fault> faults) {
        refuse(Problem.faulty(faults), faults.get(0).message());
        return CostCommand.FAULTY;
    }

    private int failed(Throwable cause) {
        refuse(
                Problem.unexpected(),
                "The program failed and the request may be good; what went wrong: " + cause
                        + (cause instanceof OutOfMemoryError ? ". Give it more memory, such as java -Xmx2g." : ""));
        return CostCommand.FAILED;
    }

    private void write(String text) {
        terminal.out().print(text);
        terminal.out().flush();
    }
}
