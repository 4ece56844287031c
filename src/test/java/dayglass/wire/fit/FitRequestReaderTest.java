package dayglass.wire.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Fault;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitRequestReaderTest {
    private static final String GOOD = """
            {"camera": {"width": "27.60", "height": "19.20", "photositesWide": 4600, "photositesHigh": 3200, "mount": "PL"},
             "delivery": {"aspect": "2.39"},
             "lens": {"focal": "75", "tStop": "2.0", "squeeze": "1", "mounts": ["PL", "EF"]},
             "attachment": {"squeeze": "1.33", "focusing": "single"}}""";

    /** Each row changes a part of the good request and tells every pointer at fault. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nothing                     | nothing                                  | ''",
                "\"mount\": \"PL\"           | \"mount\": \"Nowhere\"                   | /camera/mount",
                "[\"PL\", \"EF\"]            | [\"PL\", \"PL\"]                         | /lens/mounts/1",
                "[\"PL\", \"EF\"]            | [\"PL\", \"X\"]                          | /lens/mounts/1",
                "[\"PL\", \"EF\"]            | []                                       | /lens/mounts",
                "\"focal\": \"75\"           | \"focal\": \"75\", \"minFocal\": \"70\", \"maxFocal\": \"80\" | /lens",
                "\"focal\": \"75\"           | \"minFocal\": \"80\", \"maxFocal\": \"70\" | /lens",
                "\"focal\": \"75\"           | \"minFocal\": \"70\"                     | /lens/maxFocal",
                "\"focal\": \"75\"           | \"maxFocal\": \"70\"                     | /lens/minFocal",
                "\"focal\": \"75\",          | ''                                       | /lens/focal",
                "\"focal\": \"75\"           | \"focal\": \"0\"                         | /lens/focal",
                "\"focal\": \"75\"           | \"focal\": 75                            | /lens/focal",
                "\"focal\": \"75\"           | \"focal\": \"75.00000000001\"            | /lens/focal",
                "\"squeeze\": \"1\"          | \"squeeze\": \"3.01\"                    | /lens/squeeze",
                "\"squeeze\": \"1.33\"       | \"squeeze\": \"0.99\"                    | /attachment/squeeze",
                "\"aspect\": \"2.39\"        | \"aspect\": \"5.1\"                      | /delivery/aspect",
                "\"photositesHigh\": 3200,   | ''                                       | /camera/photositesHigh",
                "\"photositesWide\": 4600,   | ''                                       | /camera/photositesWide",
                "\"photositesWide\": 4600    | \"photositesWide\": 0                    | /camera/photositesWide",
                "\"single\"                  | \"triple\"                               | /attachment/focusing",
                "\"single\"                  | null                                     | /attachment/focusing",
                "\"single\"                  | \"single\", \"minFocal\": \"9\", \"maxFocal\": \"8\" | /attachment",
                "\"single\"                  | \"single\", \"lightLossStops\": \"-1\"   | /attachment/lightLossStops",
                "\"delivery\"                | \"light\": {\"shutterAngle\": \"361\", \"iso\": 1.5}, \"delivery\" | /light/iso /light/shutterAngle",
                "\"delivery\"                | \"mountTable\": {\"PL\": \"52\"}, \"delivery\" | /mountTable/PL",
                "\"delivery\"                | \"mountTable\": {\"Own\": \"0\"}, \"delivery\" | /mountTable/Own",
                "\"delivery\"                | \"mountTable\": 3, \"delivery\"          | /mountTable",
                "\"delivery\"                | \"sets\": {}, \"delivery\"               | /sets"
            })
    void everyFaultIsToldAtItsPlace(String part, String instead, String pointers) {
        assertEquals(pointers, faults(GOOD.replace(part, instead)));
    }

    private static String faults(String text) {
        return FitRequestReader.read(text.getBytes(StandardCharsets.UTF_8))
                .fold(good -> "", faults -> faults.stream().map(Fault::pointer).collect(Collectors.joining(" ")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"Own\": \"48.5\"}  | Own | ''",
                "{\"Own\": \"abc\"}   | Own | /mountTable/Own", // its use is no second fault
                "7                    | Own | /mountTable", // nor is any mount checked against a table that is none
                "{\"Own\": \"48.5\"}  | own | /camera/mount"
            })
    void aMountOfTheUsersOwnIsKnown(String table, String mount, String pointers) {
        String text = GOOD.replace("\"mount\": \"PL\"", "\"mount\": \"" + mount + "\"")
                .replace("\"delivery\"", "\"mountTable\": " + table + ", \"delivery\"");
        assertEquals(
                Set.copyOf(Arrays.asList(pointers.split(" "))),
                Set.copyOf(Arrays.asList(faults(text).split(" "))));
    }
}
