package dayglass.web.page.ways;

import dayglass.base.Stored;
import dayglass.job.Job;
import dayglass.optics.check.Fit;
import dayglass.paper.PaperSize;
import dayglass.paper.Pdf;
import dayglass.planning.ways.OptionsSheet;
import dayglass.web.page.picture.Words;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The options sheet as PDF for the producer, on paper laid across. */
public final class SheetPaper {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    private final WaySources sources;

    public SheetPaper(WaySources sources) {
        this.sources = sources;
    }

    /** In the order of the ways. */
    public byte[] bytes(OptionsSheet sheet, PaperSize size) {
        return bytes(sheet, SheetOrder.of(""), size);
    }

    byte[] bytes(OptionsSheet sheet, SheetOrder order, PaperSize size) {
        Optional<Job> job = sources.jobs().find(sheet.job()).map(Stored::facts);
        List<SheetLine> lines = SheetLine.of(sheet);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", job.map(Job::name).orElse(""));
        model.put("currency", job.map(each -> each.currency().code()).orElse(""));
        model.put("at", Words.moment(sheet.startedAt(), ZoneOffset.UTC));
        model.put(
                "brief",
                sources.briefs()
                        .of(sheet.job())
                        .map(brief -> BriefWords.of(brief.facts()))
                        .orElse(List.of()));
        model.put("whole", sheet.over() && lines.size() == sheet.ways());
        model.put("lines", order.sorted(lines));
        model.put("scatter", ScatterPicture.of(lines));
        model.put("cautions", Fit.CAUTIONS);
        StringOutput page = new StringOutput();
        TEMPLATES.render("sheetpaper.jte", model, page);
        return Pdf.across(page.toString(), size);
    }
}
