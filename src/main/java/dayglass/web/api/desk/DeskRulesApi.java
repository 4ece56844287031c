package dayglass.web.api.desk;

import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.desk.DeskRules;
import dayglass.desk.KeptRules;
import dayglass.shelf.desk.DeskRulesJson;
import dayglass.web.api.IfMatch;
import dayglass.web.api.Replies;
import dayglass.web.api.Requests;
import dayglass.web.error.Refusal;
import dayglass.wire.Json;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** {@code /api/desk-rules}: at version 0 they are the usual ones. */
final class DeskRulesApi {
    private final KeptRules rules;

    DeskRulesApi(KeptRules rules) {
        this.rules = rules;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/desk-rules", ctx -> {
            Requests.onlyParameters(ctx);
            show(ctx, rules.now());
        });
        routes.put("/api/desk-rules", this::change);
    }

    private void change(Context ctx) {
        Requests.onlyParameters(ctx);
        IfMatch ifMatch = IfMatch.of(ctx);
        DeskRules read = Requests.body(ctx, DeskRulesJson.reader());
        Stored<DeskRules.Id, DeskRules> current = rules.now();
        if (!ifMatch.matches(current.version())) {
            throw stale();
        }
        show(
                ctx,
                rules.keep(new Stored<>(current.id(), current.version(), read)).fold(kept -> kept, problem -> {
                    throw problem.code() == Problem.Code.STALE ? stale() : Refusal.of(problem);
                }));
    }

    private Refusal stale() {
        Stored<DeskRules.Id, DeskRules> current = rules.now();
        return IfMatch.stale("The desk's rules are", current.version(), json(current));
    }

    private static void show(Context ctx, Stored<DeskRules.Id, DeskRules> stored) {
        ctx.header("ETag", IfMatch.tag(stored.version()));
        Replies.json(ctx, json(stored));
    }

    private static Json.Obj json(Stored<DeskRules.Id, DeskRules> stored) {
        Json.Members members = Json.object().put("version", stored.version());
        DeskRulesJson.write(members, stored.facts());
        return members.build();
    }
}
