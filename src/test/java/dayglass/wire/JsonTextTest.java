package dayglass.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Fault;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Strict JSON: RFC 8259 decides what is good and what is not. */
class JsonTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{",
                "[1",
                "[1,]",
                "[,1]",
                "{\"a\":1,}",
                "{a:1}",
                "{'a':1}",
                "{\"a\" 1}",
                "{\"a\":}",
                "{\"a\"}",
                "[01]",
                "[-01]",
                "[+1]",
                "[.5]",
                "[1.]",
                "[1e]",
                "[1e+]",
                "[-]",
                "[NaN]",
                "[Infinity]",
                "[-Infinity]",
                "[0x10]",
                "[1a]",
                "1a",
                "truex",
                "[tru]",
                "[True]",
                "[nul]",
                "[\"a]",
                "[\"\\x41\"]",
                "[\"\\u12G4\"]",
                "[\"\\u123\"]",
                "[\"a\tb\"]",
                "[\"a\nb\"]",
                "// note\n[]",
                "/* note */ []",
                "[] # note",
                "[] []",
                "{} {}",
                "1 2",
                "[]]",
                "{}}",
                "[1 2]",
                "[\"a\" \"b\"]",
                "[1}",
                "{\"a\":1]",
                "\u00a0[]",
                "[\f]",
                "\uFEFF\uFEFF[]",
                "[]\u0000"
            })
    void whatIsNotStrictJsonIsOneFaultOfTheWholeText(String text) {
        List<Fault> faults = faultsOf(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(1, faults.size());
        assertEquals("", faults.get(0).pointer());
        assertTrue(
                faults.get(0).message().matches("this is not JSON: line \\d+, column \\d+: .+"),
                faults.get(0).message());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "1.0",
                "1e0",
                "1E+400000",
                "\"\"",
                "null",
                "true",
                " [ ] ",
                "{}\r\n",
                "\uFEFF{}",
                "[\"\u007f\u0085\"]",
                "[\"\\ud800\"]",
                "[\"\\/\\b\\f\\n\\r\\t\\\"\\\\\"]",
                "{\"\":1}",
                "\"\uD83D\uDE00\""
            })
    void strictJsonIsRead(String text) {
        assertTrue(JsonText.parse(text.getBytes(StandardCharsets.UTF_8)) instanceof Checked.Good, text);
    }

    @Test
    void theFaultSaysWhereInTheTextItIs() {
        assertTrue(message("{\n  \"a\": 1,\n  oops\n}".getBytes(StandardCharsets.UTF_8))
                .startsWith("this is not JSON: line 3, column "));
        assertTrue(
                message(bytes('[', '\n', ' ', '"', 0xC3, '"', ']')).startsWith("this is not JSON: line 2, column 3: "));
    }

    @Test
    void bytesThatAreNotUtf8AreNotJson() {
        assertTrue(message(bytes('[', '"', 0xFF, '"', ']')).contains("UTF-8"));
        assertTrue(message(bytes('[', '"', 0xC0, 0xAF, '"', ']')).contains("UTF-8"), "overlong");
        assertTrue(message(bytes('[', '"', 0xED, 0xA0, 0x80, '"', ']')).contains("UTF-8"), "an encoded surrogate");
        assertTrue(message(bytes('"', 0xE2, 0x82)).contains("UTF-8"), "cut off");
        assertEquals(1, faultsOf("{}".getBytes(StandardCharsets.UTF_16)).size());
        assertEquals(1, faultsOf("{}".getBytes(StandardCharsets.UTF_16LE)).size());
    }

    @Test
    void depthAndLengthInsideTheLimitTripNothing() {
        assertGood("[".repeat(1_000_000) + "]".repeat(1_000_000));
        assertGood("{\"a\":".repeat(300_000) + "1" + "}".repeat(300_000));
        assertGood("1".repeat(2_000_000));
        assertGood("\"" + "a".repeat(2_000_000) + "\"");
        assertGood("{\"" + "a".repeat(2_000_000) + "\":1}");
        assertEquals(
                1,
                faultsOf("[".repeat(100_000).getBytes(StandardCharsets.UTF_8)).size());
    }

    @Test
    void aTextOverTwoMebibytesIsOneFault() {
        byte[] spaces = new byte[2 * 1024 * 1024];
        Arrays.fill(spaces, (byte) ' ');
        spaces[0] = '1';
        assertTrue(JsonText.parse(spaces) instanceof Checked.Good);
        byte[] longer = Arrays.copyOf(spaces, spaces.length + 1);
        longer[spaces.length] = ' ';
        assertTrue(message(longer).contains("2 MiB"));
    }

    @Test
    void membersKeepTheirOrderAndTellWhichAreGivenTwice() {
        Json.Obj object = (Json.Obj) good("{\"job\":1,\"b\":[2],\"\\u006aob\":3,\"a\":{\"x\":1,\"x\":1}}");
        assertEquals(List.of("job", "b", "a"), List.copyOf(object.members().keySet()));
        assertEquals(Set.of("job"), object.repeated());
        assertEquals(new Json.Num("1"), object.members().get("job"));
    }

    @Test
    void namesOfOneHashDoNotSlowOrStopTheReading() {
        StringBuilder text = new StringBuilder("{");
        for (int i = 0; i < 1 << 14; i++) {
            StringBuilder name = new StringBuilder();
            for (int bit = 0; bit < 14; bit++) {
                name.append((i >> bit & 1) == 0 ? "Aa" : "BB");
            }
            text.append(i == 0 ? "" : ",").append('"').append(name).append("\":1");
        }
        assertEquals(
                1 << 14,
                ((Json.Obj) good(text.append('}').toString())).members().size());
    }

    @Test
    void printedTextReadsAsTheSameValue() {
        String text =
                "{\"a\":[1,-0,1.0,1e9,true,false,null,\"\\ud83d\\ude00 \\udc00\\u0000\\\"\",[],{}],\"\\ud800\":\"\u00fc\"}";
        Json json = good(text);
        String printed = JsonPrint.pretty(json);
        assertEquals(json, good(printed));
        assertTrue(printed.contains("\"\\ud800\" : \"\u00fc\""), printed);
    }

    private static void assertGood(String text) {
        assertTrue(JsonText.parse(text.getBytes(StandardCharsets.UTF_8)) instanceof Checked.Good);
    }

    private static Json good(String text) {
        return JsonText.parse(text.getBytes(StandardCharsets.UTF_8)).fold(json -> json, faults -> {
            throw new AssertionError(faults.toString());
        });
    }

    private static List<Fault> faultsOf(byte[] text) {
        return JsonText.parse(text).fold(json -> List.of(), faults -> faults);
    }

    private static String message(byte[] text) {
        return faultsOf(text).get(0).message();
    }

    private static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }
}
