package dayglass.web.api.planning.ways;

import dayglass.job.Job;
import dayglass.paper.PaperSize;
import dayglass.planning.ways.OptionsSheet;
import dayglass.planning.ways.OptionsSheets;
import dayglass.web.api.Keyed;
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
    private final Keyed keyed;
    private final Printer printer;

    /** Prints a sheet. */
    @FunctionalInterface
    public interface Printer {
        byte[] print(OptionsSheet sheet, PaperSize size);
    }

    public OptionsSheetApi(OptionsSheets sheets, Keyed keyed, Printer printer) {
        this.sheets = sheets;
        this.keyed = keyed;
        this.printer = printer;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/api/jobs/{id}/options-sheets", keyed.once(this::start));
        routes.get(PATH + "{id}", this::read);
        routes.get(PATH + "{id}/pdf", this::print);
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
        Replies.json(ctx, OptionsSheetJson.write(sheet(ctx)));
    }

    private OptionsSheet sheet(Context ctx) {
        long number = Requests.pathId(ctx);
        return sheets.find(number)
                .orElseThrow(() -> new Refusal(
                        ProblemKind.NOT_FOUND,
                        "There is no options sheet " + number
                                + "; sheets are kept for some hours, and not when the program ends."));
    }

    private void print(Context ctx) {
        PaperSize size = Requests.paper(ctx);
        OptionsSheet sheet = sheet(ctx);
        ctx.contentType("application/pdf")
                .header("Content-Disposition", "attachment; filename=\"options-sheet-" + sheet.number() + ".pdf\"")
                .result(printer.print(sheet, size));
    }
}
