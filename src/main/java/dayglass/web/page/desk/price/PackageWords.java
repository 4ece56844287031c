package dayglass.web.page.desk.price;

import dayglass.catalogue.LensModel;
import dayglass.inventory.LensSet;
import dayglass.inventory.Shelf;
import dayglass.inventory.Unit;
import dayglass.web.page.form.Form;
import dayglass.web.request.PathNumbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** The rows of a package by the names of what they ask for. */
final class PackageWords {
    private final Shelf shelf;

    PackageWords(Shelf shelf) {
        this.shelf = shelf;
    }

    List<PackageView.Row> rows(Form form) {
        List<PackageView.Row> rows = new ArrayList<>();
        for (int row = 0; row < form.rows("/lines"); row++) {
            Map<String, String> hidden = WishField.hidden(form, row);
            rows.add(new PackageView.Row(
                    row, name(form, "/lines/" + row + "/"), hidden, !form.has("/lines/" + row + "/unit")));
        }
        return rows;
    }

    private String name(Form form, String row) {
        if (form.has(row + "focalMm")) {
            return "any " + form.value(row + "focalMm") + " mm"
                    + (form.has(row + "circleMm")
                            ? " with an image circle of " + form.value(row + "circleMm") + " mm"
                            : "");
        }
        OptionalLong model = PathNumbers.of(form.value(row + "model"));
        OptionalLong set = PathNumbers.of(form.value(row + "set"));
        OptionalLong unit = PathNumbers.of(form.value(row + "unit"));
        String gone = "something that is not on the shelf";
        if (model.isPresent()) {
            return shelf.models()
                    .find(new LensModel.Id(model.getAsLong()))
                    .map(found -> found.facts().fullName())
                    .orElse(gone);
        }
        if (set.isPresent()) {
            return shelf.sets()
                    .find(new LensSet.Id(set.getAsLong()))
                    .map(found -> found.facts().name())
                    .orElse(gone);
        }
        return unit.isPresent()
                ? shelf.units()
                        .find(new Unit.Id(unit.getAsLong()))
                        .map(found -> "unit " + found.facts().tag())
                        .orElse(gone)
                : gone;
    }
}
