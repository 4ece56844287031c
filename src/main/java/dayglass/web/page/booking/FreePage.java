package dayglass.web.page.booking;

import dayglass.base.Outcome;
import dayglass.base.Problem;
import dayglass.base.Stored;
import dayglass.house.House;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.booking.FreeDays;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.inventory.booking.Stay;
import dayglass.inventory.booking.Whereabouts;
import dayglass.web.api.inventory.booking.TimesReader;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Form;
import dayglass.web.request.PathNumbers;
import dayglass.wire.Fields;
import dayglass.wire.Json;
import dayglass.wire.Read;
import dayglass.wire.Readers;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is free from day to day, and the booking of some of it at once. */
final class FreePage {
    private static final String PAGE = "/shelf/free";
    private static final String FIRST = "/firstDay";
    private static final String LAST = "/lastDay";

    /** The days of which the times were made; times are made anew where the days are other ones. */
    private static final String MADE_OF = "madeOf";

    private static final String UNIT = "unit";
    private static final String SET = "set";
    private static final String NONE_TICKED = "/unitIds";

    private final Shelf shelf;
    private final Whereabouts whereabouts;
    private final Html html;

    FreePage(Shelf shelf, Whereabouts whereabouts, Html html) {
        this.shelf = shelf;
        this.whereabouts = whereabouts;
        this.html = html;
    }

    void route(RoutesConfig routes) {
        routes.get(PAGE, ctx -> {
            Form asked = Form.sent(ctx.queryParamMap());
            html.render(ctx, "free.jte", model(timed(asked), Form.EMPTY, ticked(ctx.queryParams(UNIT), List.of())));
        });
        routes.post(PAGE, this::book);
    }

    private House house() {
        return whereabouts.settings().now().facts();
    }

    private static Set<String> ticked(List<String> units, List<String> sets) {
        Set<String> ticked = new HashSet<>();
        units.forEach(unit -> ticked.add(UNIT + unit));
        sets.forEach(set -> ticked.add(SET + set));
        return ticked;
    }

    /** The first day for which a unit can still go out at the usual time. */
    private LocalDate usualDay() {
        ZonedDateTime now = whereabouts.clock().instant().atZone(house().zone());
        return now.toLocalDate().plusDays(now.toLocalTime().isBefore(house().outTime()) ? 1 : 2);
    }

    private record Days(LocalDate first, LocalDate last) {}

    /** The form with the times that its days stand for, where none were typed for these days. */
    private Form timed(Form asked) {
        String usual = usualDay().toString();
        String first = asked.has(FIRST) ? asked.value(FIRST).strip() : usual;
        String last = asked.has(LAST) ? asked.value(LAST).strip() : first;
        Form form = asked.with(FIRST, first).with(LAST, last);
        boolean typed = asked.value(MADE_OF).equals(first + " " + last)
                && asked.has(EntryForm.OUT)
                && asked.has(EntryForm.BACK);
        if (typed) {
            return form;
        }
        return EntryForm.read(
                        days(),
                        Json.object()
                                .put("firstDay", first)
                                .put("lastDay", last)
                                .build())
                .fold(days -> times(form, days), problem -> form.with(problem));
    }

    private static dayglass.wire.Reader<Days> days() {
        return Fields.object(fields -> {
            Read<LocalDate> first = fields.required("firstDay", Readers.date());
            Read<LocalDate> last = fields.required("lastDay", Readers.date());
            if (first.isGood() && last.isGood() && last.get().isBefore(first.get())) {
                return fields.place().member("lastDay").fault("must not be before the first day");
            }
            return fields.build(() -> new Days(first.get(), last.get()));
        });
    }

    private Form times(Form form, Days days) {
        Stay stay = FreeDays.use(days.first(), days.last(), house());
        Form timed = form.with(MADE_OF, days.first() + " " + days.last());
        timed = ClockField.with(timed, EntryForm.OUT, stay.out(), house().zone());
        return ClockField.with(timed, EntryForm.BACK, stay.back(), house().zone());
    }

    private Outcome<TimesReader.Times> moments(Form asked) {
        Json.Members members = Json.object();
        EntryForm.put(members, "out", ClockField.text(asked, EntryForm.OUT, house().zone()));
        EntryForm.put(members, "back", ClockField.text(asked, EntryForm.BACK, house().zone()));
        return EntryForm.read(
                Fields.object(fields -> {
                    Read<TimesReader.Times> times = TimesReader.read(fields, house());
                    return fields.build(times::get);
                }),
                members.build());
    }

    /**
     * The page.
     *
     * @param booking the form below the list, as it was sent
     */
    private Map<String, Object> model(Form asked, Form booking, Set<String> ticked) {
        Map<String, Object> model = new HashMap<>(Map.of("booking", booking, "ticked", ticked, "zone", house().zone()));
        boolean faultyDays = asked.faulty();
        Outcome<TimesReader.Times> times = moments(asked);
        model.put("asked", faultyDays ? asked : times.fold(good -> asked, problem -> asked.with(problem)));
        Optional<FreeView> found = faultyDays
                ? Optional.empty()
                : times.fold(
                        good -> Optional.of(new FreeSearch(shelf, whereabouts)
                                .during(good.out(), good.back(), asked.value("words"))),
                        problem -> Optional.empty());
        model.put("found", found);
        return model;
    }

    private void book(Context ctx) {
        Form form = Requests.form(ctx);
        List<String> units = ctx.formParams(UNIT);
        List<String> sets = ctx.formParams(SET);
        List<String> all = members(units, sets);
        Outcome<List<Stored<Occupation.Id, Occupation>>> booked = all.isEmpty()
                ? Outcome.faulty(NONE_TICKED, "tick at least one unit, or a whole set")
                : EntryForm.read(form, all, Kind.BOOKING, house())
                        .then(asked -> whereabouts.bookUnits().add(asked.units(), asked.entry()));
        Optional<Problem> refused = booked.fold(
                done -> {
                    Requests.see(ctx, after(done));
                    return Optional.empty();
                },
                Optional::of);
        refused.ifPresent(problem -> html.renderFaulty(
                ctx, "free.jte", model(timed(form), form.with(NONE_TICKED, "").with(problem), ticked(units, sets))));
    }

    /** Those that are ticked, and the members of the sets that are, each once. */
    private List<String> members(List<String> units, List<String> sets) {
        Set<String> all = new LinkedHashSet<>();
        units.stream().filter(unit -> PathNumbers.of(unit).isPresent()).forEach(all::add);
        for (String set : sets) {
            PathNumbers.of(set).stream()
                    .boxed()
                    .flatMap(id -> shelf.sets().find(new LensSet.Id(id)).stream())
                    .flatMap(found -> found.facts().members().stream())
                    .forEach(member -> all.add(String.valueOf(member.number())));
        }
        return List.copyOf(all);
    }

    private static String after(List<Stored<Occupation.Id, Occupation>> booked) {
        return booked.size() == 1
                ? "/bookings/" + booked.get(0).id().number()
                : "/bookings?words=" + URLEncoder.encode(booked.get(0).facts().subject(), StandardCharsets.UTF_8);
    }
}
