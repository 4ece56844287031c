package dayglass.web.page.booking;

import dayglass.base.Stored;
import dayglass.house.Person;
import dayglass.inventory.Unit;
import dayglass.inventory.booking.HandOver;
import dayglass.inventory.booking.Obstacle;
import dayglass.inventory.booking.Occupation;
import dayglass.inventory.booking.Occupation.Kind;
import dayglass.web.page.Label;
import dayglass.web.page.picture.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the page of a booking, a bench visit or an absence shows beside its forms.
 *
 * @param obstacles what stands against handing it over now
 * @param overrides that somebody let it out all the same, in sentences
 */
public record BookingView(
        long id,
        Occupation facts,
        Label label,
        long unit,
        String tag,
        String state,
        List<Obstacle> obstacles,
        List<String> overrides,
        ZoneId zone) {
    public BookingView {
        obstacles = List.copyOf(obstacles);
        overrides = List.copyOf(overrides);
    }

    static BookingView of(
            Stored<Occupation.Id, Occupation> stored,
            Stored<Unit.Id, Unit> unit,
            Wording words,
            Map<Person.Id, String> names) {
        Occupation of = stored.facts();
        List<Label.Field> fields = new ArrayList<>(List.of(
                new Label.Field("unit", unit.facts().tag()),
                new Label.Field("out", words.moment(of.stay().out())),
                new Label.Field("back", words.moment(of.stay().back()))));
        if (of.stay().freeAt().isAfter(of.stay().back())) {
            fields.add(new Label.Field("free again", words.moment(of.stay().freeAt())));
        }
        of.handling().wentOut().ifPresent(out -> fields.add(new Label.Field("went out", words.moment(out))));
        of.handling().cameBack().ifPresent(back -> fields.add(new Label.Field("came back", words.moment(back))));
        fields.add(new Label.Field(
                "entered",
                names.getOrDefault(
                                of.record().by(), "person " + of.record().by().number()) + ", "
                        + words.moment(of.record().at())));
        return new BookingView(
                stored.id().number(),
                of,
                new Label(of.subject(), fields),
                unit.id().number(),
                unit.facts().tag(),
                words.state(of),
                List.of(),
                List.of(),
                words.zone());
    }

    BookingView with(List<Obstacle> found, List<HandOver.KeptOverride> kept, Map<Person.Id, String> names) {
        return new BookingView(
                id,
                facts,
                label,
                unit,
                tag,
                state,
                mayGoOut() ? found : List.of(),
                kept.stream()
                        .map(each -> each.obstacles() + " "
                                + names.getOrDefault(
                                        each.by(), "person " + each.by().number())
                                + " let it out all the same, " + Words.moment(each.at(), zone) + ": " + each.reason())
                        .toList(),
                zone);
    }

    /** In a word or two, with a capital. */
    public String kind() {
        return switch (facts.kind()) {
            case BOOKING -> "Booking";
            case BENCH -> "Bench visit";
            case ABSENCE -> "Absence";
        };
    }

    public boolean bench() {
        return facts.kind() == Kind.BENCH;
    }

    /** It stands and has not gone out yet. */
    public boolean mayGoOut() {
        return facts.kind() == Kind.BOOKING
                && !facts.cancelled()
                && facts.handling().wentOut().isEmpty();
    }

    /** Something that no reason helps against. */
    public boolean forbidden() {
        return obstacles.stream().anyMatch(each -> !each.overridable());
    }

    public boolean mayChange() {
        return !facts.cancelled() && facts.handling().cameBack().isEmpty();
    }

    public boolean mayBeCancelled() {
        return !facts.cancelled() && facts.handling().wentOut().isEmpty();
    }
}
