package dayglass.app;

import dayglass.optics.FitQuestion;
import dayglass.optics.check.Fit;
import dayglass.wire.fit.FitRequestReader;
import dayglass.wire.fit.FitWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fit FILE}: does a lens give the picture on a camera. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = {
            "Judges a lens on a camera: reads what is asked as JSON and prints whether it covers the picture, mounts, "
                    + "lets in light enough, focuses and can be carried.",
            "",
            "Lengths are in millimetres unless the name says otherwise; numbers are decimals in quotes."
        },
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:the lens was judged, whatever the verdict",
            "1:the program failed",
            "2:the request is faulty, or the command is"
        },
        footerHeading = "%nThe smallest request:%n",
        footer = {
            "  {\"camera\": {\"width\": \"24.89\", \"height\": \"18.66\", \"mount\": \"PL\"},",
            "   \"delivery\": {\"aspect\": \"2.39\"},",
            "   \"lens\": {\"focal\": \"40\", \"tStop\": \"2.3\", \"squeeze\": \"2\", \"imageCircle\": \"31.1\", "
                    + "\"mounts\": [\"PL\"]}}",
            "",
            "Examples:",
            "  dayglass fit lens.json",
            "  dayglass fit - --json < lens.json"
        })
final class FitCommand implements Callable<Integer> {
    private static final int JUDGED = 0;

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "the request; - for standard input")
    private String file = "";

    @Option(names = "--json", description = "print the answer, or the problem document, as JSON and nothing else")
    private boolean json;

    FitCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        CommandReply reply = new CommandReply(terminal, json);
        return reply.to(
                file,
                text -> FitRequestReader.read(text)
                        .fold(question -> judge(question, reply), faults -> reply.faulty(text, faults)));
    }

    private static int judge(FitQuestion question, CommandReply reply) {
        Fit fit = Fit.of(question);
        reply.print(FitWriter.write(fit), () -> FitTable.of(question, fit));
        return JUDGED;
    }
}
