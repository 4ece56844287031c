package dayglass.web.page.ways;

import dayglass.base.Stored;
import dayglass.catalogue.LensModels;
import dayglass.catalogue.OwnMounts;
import dayglass.job.Briefs;
import dayglass.job.Job;
import dayglass.job.Jobs;
import dayglass.job.Ways;
import dayglass.planning.OptionSources;
import dayglass.planning.ways.OptionsSheets;
import dayglass.web.page.Requests;
import io.javalin.http.Context;

/** What these pages show and change. */
public record WaySources(
        Jobs jobs,
        Briefs briefs,
        Ways ways,
        OptionsSheets sheets,
        OptionSources options,
        LensModels models,
        OwnMounts mounts) {
    Stored<Job.Id, Job> job(Context ctx) {
        return Requests.find(ctx, jobs, Job.Id::new);
    }

    static String page(Job.Id job) {
        return "/jobs/" + job.number() + "/ways";
    }
}
