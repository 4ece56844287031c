package dayglass.sheet;

import java.time.Instant;
import java.util.List;

/** The parts of a streamed workbook that do not depend on its rows. */
final class BookParts {
    /** The style of cells in bold. */
    static final int BOLD = 1;
    /** The style of dates. */
    static final int DATE = 2;
    /** The style of amounts without decimals; those with more follow it. */
    static final int AMOUNT = 3;
    /** The style of a total without decimals; those with more follow it. */
    static final int TOTAL = AMOUNT + 5;

    private static final int MOST_DECIMALS = 4;
    private static final int FIRST_FORMAT = 164;
    private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
    private static final String DOCUMENT = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final String CORE = "application/vnd.openxmlformats-package.core-properties+xml";

    private BookParts() {}

    static String contentTypes(int sheets) {
        StringBuilder types = new StringBuilder(XML)
                .append("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">")
                .append(
                        "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>")
                .append(override("/docProps/core.xml", CORE))
                .append(override("/xl/workbook.xml", TYPE + "sheet.main+xml"))
                .append(override("/xl/styles.xml", TYPE + "styles+xml"));
        for (int sheet = 1; sheet <= sheets; sheet++) {
            types.append(override("/xl/worksheets/sheet" + sheet + ".xml", TYPE + "worksheet+xml"));
        }
        return types.append("</Types>").toString();
    }

    private static String override(String part, String type) {
        return "<Override PartName=\"" + part + "\" ContentType=\"" + type + "\"/>";
    }

    static String packageRelations() {
        return XML + "<Relationships xmlns=\"" + RELATIONS + "\">"
                + relation(1, DOCUMENT + "/officeDocument", "xl/workbook.xml")
                + relation(
                        2,
                        "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties",
                        "docProps/core.xml")
                + "</Relationships>";
    }

    private static String relation(int id, String type, String target) {
        return "<Relationship Id=\"r" + id + "\" Type=\"" + type + "\" Target=\"" + target + "\"/>";
    }

    static String properties(String title, Instant createdAt) {
        return XML + "<cp:coreProperties"
                + " xmlns:cp=\"http://schemas.openxmlformats.org/package/2006/metadata/core-properties\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:dcterms=\"http://purl.org/dc/terms/\""
                + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\"><dc:title>" + SheetXml.text(title)
                + "</dc:title><dc:creator>Dayglass</dc:creator><dcterms:created xsi:type=\"dcterms:W3CDTF\">"
                + createdAt + "</dcterms:created></cp:coreProperties>";
    }

    static String workbook(List<StreamBook.Sheet> sheets) {
        StringBuilder book =
                new StringBuilder(XML).append("<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + DOCUMENT + "\"><sheets>");
        for (int at = 1; at <= sheets.size(); at++) {
            book.append("<sheet name=\"" + SheetXml.text(sheets.get(at - 1).name()) + "\" sheetId=\"" + at
                    + "\" r:id=\"r" + at + "\"/>");
        }
        return book.append("</sheets></workbook>").toString();
    }

    static String workbookRelations(int sheets) {
        StringBuilder relations = new StringBuilder(XML).append("<Relationships xmlns=\"" + RELATIONS + "\">");
        for (int sheet = 1; sheet <= sheets; sheet++) {
            relations.append(relation(sheet, DOCUMENT + "/worksheet", "worksheets/sheet" + sheet + ".xml"));
        }
        return relations
                .append(relation(sheets + 1, DOCUMENT + "/styles", "styles.xml"))
                .append("</Relationships>")
                .toString();
    }

    static String styles() {
        StringBuilder formats = new StringBuilder();
        StringBuilder cells = new StringBuilder(cell(0, 0) + cell(0, 1) + cell(FIRST_FORMAT, 0));
        StringBuilder totals = new StringBuilder();
        formats.append(format(FIRST_FORMAT, "yyyy-mm-dd"));
        for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
            int number = FIRST_FORMAT + 1 + decimals;
            formats.append(format(number, "#,##0" + (decimals == 0 ? "" : "." + "0".repeat(decimals))));
            cells.append(cell(number, 0));
            totals.append(cell(number, 1));
        }
        return XML + "<styleSheet xmlns=\"" + MAIN + "\"><numFmts count=\"" + (MOST_DECIMALS + 2) + "\">" + formats
                + "</numFmts><fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font>"
                + "<font><b/><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>"
                + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill>"
                + "<fill><patternFill patternType=\"gray125\"/></fill></fills>"
                + "<borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/></cellStyleXfs>"
                + "<cellXfs count=\"" + (TOTAL + MOST_DECIMALS + 1) + "\">" + cells + totals
                + "</cellXfs></styleSheet>";
    }

    private static String format(int number, String code) {
        return "<numFmt numFmtId=\"" + number + "\" formatCode=\"" + code + "\"/>";
    }

    private static String cell(int format, int font) {
        return "<xf numFmtId=\"" + format + "\" fontId=\"" + font
                + "\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\" applyFont=\"1\"/>";
    }
}
