package dayglass.web.request;

import dayglass.paper.PaperSize;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import io.javalin.http.Context;
import java.util.List;

/** The paper that {@code ?paper=} asks for, A4 where nothing is said. */
public final class PaperAsked {
    public static final String PARAMETER = "paper";

    private PaperAsked() {}

    /** Refused where it is neither {@code A4} nor {@code Letter}, in whatever case. */
    public static PaperSize of(Context ctx) {
        List<String> values = ctx.queryParams(PARAMETER);
        return values.isEmpty()
                ? PaperSize.A4
                : PaperSize.of(values.get(0))
                        .filter(size -> values.size() == 1)
                        .orElseThrow(() -> new Refusal(
                                ProblemKind.MALFORMED,
                                "The parameter paper cannot be used: it must be given once, as A4 or Letter."));
    }
}
