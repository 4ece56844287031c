package dayglass.books.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartTableTest {
    /** Source: RFC 4180, section 2; the rule is named first. What goes beyond it is ours and says so. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            2, no line end after the last     | code,name^710,Lenses             | 710=Lenses
            4, the same number in each: fewer | code,name^710^                   | Line 2: it has 1 fields
            4, the same number in each: more  | code,name^710,a,b^               | Line 2: it has 3 fields
            5, fields may be quoted           | code,name^"710","Lenses"^        | 710=Lenses
            6, a comma in quotes              | code,name^710,"Lenses, long"^    | 710=Lenses, long
            7, a doubled quote                | code,name^710,"the ""B"" set"^   | 710=the "B" set
            ours, a code twice                | code,name^710,a^710,b^           | Line 3: the code 710 stands in line 2
            ours, no code                     | code,name^,a^                    | Line 2: the code is missing
            """)
    void aChartIsReadOrItsLineIsTold(String rule, String text, String told) {
        String read = ChartTable.read(text.replace("^", "\r\n").getBytes(StandardCharsets.UTF_8), "/text")
                .fold(
                        codes -> codes.stream()
                                .map(each -> each.code() + "=" + each.name())
                                .collect(Collectors.joining("; ")),
                        problem -> problem.faults().get(0).message());
        assertEquals(told, read.substring(0, Math.min(read.length(), told.length())), read);
    }
}
