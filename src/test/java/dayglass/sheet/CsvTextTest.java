package dayglass.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sections are of RFC 4180; what goes beyond it is named as such. */
class CsvTextTest {
    private static CsvText read(byte[] bytes) {
        return CsvText.read(bytes).fold(text -> text, problem -> {
            throw new AssertionError(problem);
        });
    }

    private static List<List<String>> cells(String text) {
        CsvText csv = read(text.getBytes(StandardCharsets.UTF_8));
        return Stream.concat(Stream.of(csv.heading()), csv.rows().stream())
                .map(CsvText.Row::cells)
                .toList();
    }

    static List<Arguments> tables() {
        return List.of(
                Arguments.of("section 2, rule 1: CRLF after each", "a,b\r\n1,2\r\n", List.of("1", "2")),
                Arguments.of("section 2, rule 2: the last may lack it", "a,b\r\n1,2", List.of("1", "2")),
                Arguments.of("section 2, rule 4: spaces belong to a field", "a,b\r\n 1 ,2\r\n", List.of(" 1 ", "2")),
                Arguments.of("section 2, rule 5: fields may be quoted", "a,b\r\n\"1\",2\r\n", List.of("1", "2")),
                Arguments.of("section 2, rule 6: a comma in quotes", "a,b\r\n\"1,0\",2\r\n", List.of("1,0", "2")),
                Arguments.of(
                        "section 2, rule 6: a line end in quotes", "a,b\r\n\"1\r\n0\",2\r\n", List.of("1\r\n0", "2")),
                Arguments.of("section 2, rule 6: a CR alone in quotes", "a,b\r\n\"1\r0\",2\r\n", List.of("1\r0", "2")),
                Arguments.of("section 2, rule 6: an LF alone in quotes", "a,b\r\n\"1\n0\",2\r\n", List.of("1\n0", "2")),
                Arguments.of("section 2, rule 7: a doubled quote", "a,b\r\n\"1\"\"0\",2\r\n", List.of("1\"0", "2")),
                Arguments.of("an empty field in quotes", "a,b\r\n\"\",2\r\n", List.of("", "2")),
                Arguments.of("beyond: line feeds alone", "a,b\n1,2\n", List.of("1", "2")),
                Arguments.of("beyond: semicolons", "a;b\r\n1,0;2\r\n", List.of("1,0", "2")),
                Arguments.of("beyond: tabs", "a\tb\n1,0\t2\n", List.of("1,0", "2")),
                Arguments.of("beyond: a byte order mark", "\uFEFFa,b\r\n1,2\r\n", List.of("1", "2")),
                Arguments.of("beyond: empty lines are passed over", "\r\na,b\r\n\r\n1,2\r\n\r\n", List.of("1", "2")),
                Arguments.of(
                        "beyond: a bare quote in an open field", "a,b\r\n5\" lens,2\r\n", List.of("5\" lens", "2")),
                Arguments.of("beyond: two bare quotes", "a,b\r\n5\"\" lens,2\r\n", List.of("5\"\" lens", "2")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tables")
    void aTableIsRead(String rule, String text, List<String> firstRow) {
        assertEquals(List.of(List.of("a", "b"), firstRow), cells(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            a,b\\n1,"2\\n3,4\\n | Line 2
            a,b\\n1,2\\n"x"y,4\\n | After line 2
            ''               | empty
            """)
    void aTableThatCannotBeReadIsToldWithItsLine(String text, String says) {
        String message = CsvText.read(text.replace("\\n", "\n").getBytes(StandardCharsets.UTF_8))
                .fold(csv -> "read", problem -> problem.faults().get(0).message());
        assertTrue(message.contains(says), message);
    }

    @ParameterizedTest
    @CsvSource({"ISO-8859-1", "UTF-16LE"})
    void anotherEncodingIsTold(String encoding) {
        byte[] bytes = "tag,shelf\r\nä,B\r\n".getBytes(Charset.forName(encoding));
        String message = CsvText.read(bytes)
                .fold(
                        csv -> csv.heading().toString(),
                        problem -> problem.faults().get(0).message());
        assertTrue(message.contains("UTF-8"), message);
    }

    @ParameterizedTest
    @CsvSource({"'a\r\n\"x\r\ny\"\r\nz', 2 4", "'a\n\n\nb\nc', 4 5"})
    void rowsKnowTheLineTheyBeginOn(String text, String lines) {
        List<String> found = read(text.getBytes(StandardCharsets.UTF_8)).rows().stream()
                .map(row -> String.valueOf(row.line()))
                .toList();
        assertEquals(lines, String.join(" ", found));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings()
                .withChars("=+-@';,\"\t\r\n ax1\u200b\uFF1D")
                .ofMaxLength(12);
    }

    @Property
    void whatWasGuardedComesBackAsItWasTyped(@ForAll("texts") String text) {
        assertEquals(text, FormulaGuard.asTyped(FormulaGuard.harmless(text)));
    }
}
