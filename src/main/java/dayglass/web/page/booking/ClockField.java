package dayglass.web.page.booking;

import dayglass.house.LocalMoment;
import dayglass.web.api.house.Moments;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A field of a form that holds a date and a time on the house's clock. Where that time occurs twice, a second field
 * asks which of the two is meant, by its offset from UTC.
 */
public final class ClockField {
    private static final DateTimeFormatter TYPED = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    private ClockField() {}

    /** The name of the field that says which of two moments is meant. */
    public static String which(String name) {
        return "which" + name;
    }

    /** The form with a moment in the field. */
    static Form with(Form form, String name, Instant moment, ZoneId zone) {
        return form.with(name, TYPED.format(moment.atZone(zone)))
                .with(which(name), moment.atZone(zone).getOffset().getId());
    }

    /** The two moments that may be meant, the earlier first; none where what was typed is one moment or none. */
    public static List<Choice> choices(Form form, String name, ZoneId zone) {
        return local(form.value(name))
                .map(local -> LocalMoment.of(local, zone)
                        .<List<Choice>>fold(
                                once -> List.of(),
                                twice -> List.of(
                                        choice("the first time", twice.first()),
                                        choice("the second time", twice.second())),
                                never -> List.of()))
                .orElse(List.of());
    }

    private static Choice choice(String words, OffsetDateTime moment) {
        String offset = moment.getOffset().equals(ZoneOffset.UTC)
                ? ""
                : moment.getOffset().getId();
        return new Choice(moment.getOffset().getId(), words + " (UTC" + offset + ")");
    }

    /** What was typed as the contract writes it, with the offset that was chosen. */
    static String text(Form form, String name, ZoneId zone) {
        String typed = form.value(name).strip();
        String chosen = form.value(which(name));
        return choices(form, name, zone).stream()
                        .anyMatch(choice -> choice.value().equals(chosen))
                ? typed + chosen
                : typed;
    }

    /** The same; a field that was left as it was shown stands for the moment that it was made of, seconds and all. */
    static String text(Form form, String name, ZoneId zone, Instant shown) {
        Form before = with(Form.EMPTY, name, shown, zone);
        boolean same = form.value(name).strip().equals(before.value(name));
        boolean sameOfTwo =
                choices(form, name, zone).isEmpty() || form.value(which(name)).equals(before.value(which(name)));
        return same && sameOfTwo ? Moments.text(shown, zone) : text(form, name, zone);
    }

    private static Optional<LocalDateTime> local(String typed) {
        try {
            return Optional.of(LocalDateTime.parse(typed.strip()));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }
}
