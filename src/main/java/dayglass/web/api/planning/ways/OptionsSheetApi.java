package dayglass.web.api.planning.ways;

import dayglass.job.Job;
import dayglass.planning.ways.OptionsSheet;
import dayglass.planning.ways.OptionsSheets;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Starts options sheets, {@code /api/jobs/{id}/options-sheets}, and tells how far they are. */
public final class OptionsSheetApi {
    private static final String PATH = "/api/options-sheets/";
    private static final int ACCEPTED = 202;

    private final OptionsSheets sheets;

    public OptionsSheetApi(OptionsSheets sheets) {
        this.sheets = sheets;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/jobs/{id}/options-sheets", this::start);
        routes.get(PATH + "{id}", this::read);
    }

    private void start(Context ctx) {
        Requests.onlyParameters(ctx);
        Job.Id job = new Job.Id(Requests.pathId(ctx));
        Requests.noFacts(ctx);
        OptionsSheet sheet = Refusal.require(sheets.start(job));
        ctx.status(ACCEPTED).header("Location", PATH + sheet.number());
        Replies.json(ctx, OptionsSheetJson.write(sheet));
    }

    private void read(Context ctx) {
        Requests.onlyParameters(ctx);
        long number = Requests.pathId(ctx);
        Replies.json(
                ctx,
                sheets.find(number)
                        .map(OptionsSheetJson::write)
                        .orElseThrow(() -> new Refusal(
                                ProblemKind.NOT_FOUND,
                                "There is no options sheet " + number
                                        + "; sheets are kept for some hours, and not when the program ends.")));
    }
}
