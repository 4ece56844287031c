package dayglass.web.api.books;

import dayglass.books.export.Layout;
import dayglass.books.export.Layouts;
import dayglass.shelf.LayoutJson;
import dayglass.web.api.Representation;
import dayglass.web.api.Resource;

/** {@code /api/export-layouts}. */
public final class LayoutApi {
    private LayoutApi() {}

    public static Resource<Layout.Id, Layout> of(Layouts layouts) {
        return new Resource<>(new Representation<>(
                "/api/export-layouts",
                "export layout",
                layouts,
                Layout.Id::new,
                LayoutJson.reader(),
                LayoutJson::write));
    }
}
