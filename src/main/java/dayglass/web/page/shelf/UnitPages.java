package dayglass.web.page.shelf;

import dayglass.base.Stored;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.shelf.UnitJson;
import dayglass.web.page.Html;
import dayglass.web.page.Requests;
import dayglass.web.page.form.Choice;
import dayglass.web.page.form.Form;
import dayglass.web.page.form.FormJson;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The form of a unit's facts. */
final class UnitPages extends RecordPages<Unit.Id, Unit> {
    private final Shelf shelf;

    UnitPages(Shelf shelf, Html html) {
        super(html, new Kind<>("/shelf/units", "/shelf", "shelf", shelf.units(), Unit.Id::new, UnitJson.reader()));
        this.shelf = shelf;
    }

    @Override
    protected String template() {
        return "unitfacts.jte";
    }

    @Override
    protected String form() {
        return "/shelf/units/{id}/facts";
    }

    @Override
    protected String after(Unit.Id changed) {
        return "/shelf/units/" + changed.number();
    }

    @Override
    protected String name(Unit facts) {
        return "the unit " + facts.tag();
    }

    @Override
    protected Form ordered(Form sent) {
        return FormJson.compact(sent);
    }

    @Override
    protected Form form(Unit facts) {
        return FormJson.form(UnitJson.write(facts));
    }

    @Override
    protected Map<String, Object> model(Optional<Stored<Unit.Id, Unit>> stored, Form form) {
        return Map.of(
                "page", stored.map(unit -> UnitView.of(shelf, unit)).orElse(UnitView.NEW),
                "models", models(),
                "form", form);
    }

    private List<Choice> models() {
        Stream<Choice> known = Requests.all(shelf.models()).stream()
                .sorted(Comparator.comparing(model -> model.facts().fullName()))
                .map(model -> new Choice(
                        String.valueOf(model.id().number()), model.facts().fullName()));
        return Stream.concat(Stream.of(new Choice("", "not said")), known).toList();
    }
}
