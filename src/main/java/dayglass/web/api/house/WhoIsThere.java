package dayglass.web.api.house;

import dayglass.base.Stored;
import dayglass.house.Household;
import dayglass.house.Person;
import dayglass.web.error.ProblemKind;
import dayglass.web.error.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Learns who is behind a request, for as long as it is handled: programs say so in a header, pages in a cookie. Where
 * nobody is named it is the only person there is; of several, one must be named before anything is written.
 */
public final class WhoIsThere {
    public static final String HEADER = "Dayglass-Person";
    public static final String COOKIE = "person";

    /** Where people say who they are, which nobody must have done before. */
    public static final String CHOICE = "/house/you";

    private static final Set<HandlerType> READING =
            Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS, HandlerType.TRACE);
    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,17}");

    private final Household household;

    public WhoIsThere(Household household) {
        this.household = household;
    }

    public void addTo(RoutesConfig routes) {
        routes.before(this::begin);
        routes.after(ctx -> household.whoActs().end());
    }

    private void begin(Context ctx) {
        // A thread may come from a request whose end was never reached.
        household.whoActs().end();
        boolean program = ctx.path().startsWith("/api/");
        if (READING.contains(ctx.method()) || ctx.path().equals(CHOICE)) {
            return;
        }
        Optional<Person.Id> said = program ? inHeader(ctx) : inCookie(ctx);
        List<Stored<Person.Id, Person>> there = household.there();
        Person.Id person = said.isPresent()
                ? said.filter(id -> isAmong(there, id)).orElseThrow(() -> notThere(said.get(), program))
                : Optional.of(there)
                        .filter(all -> all.size() == 1)
                        .map(all -> all.get(0).id())
                        .orElseThrow(() -> notSaid(program));
        household.whoActs().begin(person);
    }

    private static Optional<Person.Id> inHeader(Context ctx) {
        Optional<String> header = Optional.ofNullable(ctx.header(HEADER));
        header.filter(text -> !NUMBER.matcher(text).matches()).ifPresent(text -> {
            throw new Refusal(ProblemKind.MALFORMED, "The header " + HEADER + " must be the id of a person.");
        });
        return header.map(text -> new Person.Id(Long.parseLong(text)));
    }

    /** A cookie that is no id says as much as none. */
    public static Optional<Person.Id> inCookie(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE))
                .filter(text -> NUMBER.matcher(text).matches())
                .map(text -> new Person.Id(Long.parseLong(text)));
    }

    private static boolean isAmong(List<Stored<Person.Id, Person>> there, Person.Id id) {
        return there.stream().anyMatch(person -> person.id().equals(id));
    }

    private static Refusal notThere(Person.Id person, boolean program) {
        return new Refusal(
                ProblemKind.NOBODY_NAMED,
                program
                        ? "The header " + HEADER + " names person " + person.number()
                                + ", who is not there or is gone: /api/people lists who is."
                        : "Whoever you said you are is gone: choose who you are at the top of the page, then send it"
                                + " again.");
    }

    private static Refusal notSaid(boolean program) {
        return new Refusal(
                ProblemKind.NOBODY_NAMED,
                program
                        ? "Several people are there: say who does this by the header " + HEADER
                                + " with an id of /api/people."
                        : "Several people are there: choose who you are at the top of the page, then send it again.");
    }
}
