package dayglass.web.page;

import dayglass.base.Stored;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.web.api.house.WhoIsThere;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Renders a template as the answer to a request, with the headers that every page bears. */
public final class Html {
    /**
     * Nothing runs, loads or is sent but what comes from and goes to this server. A blob is what the page itself holds:
     * a picture chosen and not sent yet.
     */
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:;"
                    + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Household household;

    public Html(Household household) {
        this.household = household;
    }

    private You you(Context ctx) {
        List<Stored<Person.Id, Person>> there = household.there();
        Optional<Person.Id> said = WhoIsThere.inCookie(ctx);
        List<You.Choice> people = there.stream()
                .map(person -> new You.Choice(
                        person.id().number(),
                        person.facts().name(),
                        there.size() == 1 || said.equals(Optional.of(person.id()))))
                .toList();
        String name = people.stream()
                .filter(You.Choice::chosen)
                .map(You.Choice::name)
                .findFirst()
                .orElse("");
        return new You(name, people, ctx.path());
    }

    public void render(Context ctx, String template, Map<String, Object> parameters) {
        Utf8ByteOutput output = new Utf8ByteOutput();
        you(ctx).lookAt(() -> templates.render(template, parameters, output));
        ctx.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cache-Control", "no-store")
                .contentType("text/html; charset=utf-8")
                .result(output.toByteArray());
    }

    /** A template as text, for paper. */
    public String text(String template, Map<String, Object> parameters) {
        StringOutput output = new StringOutput();
        templates.render(template, parameters, output);
        return output.toString();
    }

    /** A page again with a form that was not taken. */
    public void renderFaulty(Context ctx, String template, Map<String, Object> parameters) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        render(ctx, template, parameters);
    }
}
