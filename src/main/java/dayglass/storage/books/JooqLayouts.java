package dayglass.storage.books;

import static dayglass.storage.schema.Tables.EXPORT_LAYOUT;

import dayglass.base.Problem;
import dayglass.books.export.Layout;
import dayglass.books.export.Layouts;
import dayglass.shelf.LayoutJson;
import dayglass.storage.Database;
import dayglass.storage.VersionedTable;
import dayglass.storage.schema.tables.records.ExportLayoutRecord;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Layouts as rows, each as JSON. */
public final class JooqLayouts extends VersionedTable<Layout.Id, Layout, ExportLayoutRecord> implements Layouts {
    public JooqLayouts(Database database) {
        super(database, new Shape<>("export layout", EXPORT_LAYOUT.ID, EXPORT_LAYOUT.VERSION, Layout.Id::new));
    }

    @Override
    protected void fill(ExportLayoutRecord row, Layout facts) {
        Json.Members members = Json.object();
        LayoutJson.write(members, facts);
        row.setName(facts.name());
        row.setLayoutJson(JsonPrint.pretty(members.build()));
    }

    @Override
    protected Layout facts(DSLContext sql, ExportLayoutRecord row) {
        return LayoutJson.reader()
                .read(row.getLayoutJson().getBytes(StandardCharsets.UTF_8))
                .fold(layout -> layout, faults -> {
                    throw new IllegalStateException("a layout was kept in another form: " + faults);
                });
    }

    @Override
    protected Optional<Problem> refusal(DSLContext sql, Optional<Layout.Id> self, Layout facts) {
        return sql.selectFrom(EXPORT_LAYOUT)
                .where(
                        EXPORT_LAYOUT.NAME.eq(facts.name()),
                        EXPORT_LAYOUT.ID.ne(self.map(Layout.Id::number).orElse(0L)))
                .fetchOptional(row -> new Problem(
                        Problem.Code.ALREADY_THERE,
                        "Layout " + row.getId() + " already has the name " + facts.name() + "."));
    }

    /** What was exported in it is no longer ours. */
    @Override
    protected List<String> uses(DSLContext sql, Layout.Id id) {
        return List.of();
    }
}
