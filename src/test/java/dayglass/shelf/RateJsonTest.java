package dayglass.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Currency;
import dayglass.base.Fault;
import dayglass.catalogue.Lets;
import dayglass.catalogue.Mark;
import dayglass.catalogue.Rate;
import dayglass.wire.Checked;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A rate with what it is for and what its add-ons are, as JSON; the rates are invented. */
class RateJsonTest {
    private static final String BLOCKS = "\"blocks\": [{\"days\": 1, \"price\": \"90.00\"}]";
    private static final String ADD_ONS = "\"addOns\": [{\"name\": \"cover\", \"percent\": \"12\", \"on\": [\"hire\"]},"
            + " {\"name\": \"vat/2\", \"percent\": \"20\", \"on\": [\"hire\", \"cover\"]}]";

    private static Checked<Rate> read(String json) {
        return RateJson.reader(Currency.of("EUR")).read(json.getBytes(StandardCharsets.UTF_8));
    }

    private static Rate good(String json) {
        return read(json).fold(rate -> rate, faults -> {
            throw new AssertionError(faults);
        });
    }

    private static Set<String> pointers(String json) {
        return read(json)
                .fold(
                        rate -> Set.of(),
                        faults -> faults.stream().map(Fault::pointer).collect(Collectors.toSet()));
    }

    @Test
    void whatItIsForAndTheMarksAreRead() {
        Rate rate = good("{\"id\": \"h\", \"lets\": {\"model\": 3}, \"marks\": {\"vat/2\": \"tax\"}, " + BLOCKS + ", "
                + ADD_ONS + "}");
        assertEquals(Optional.of(new Lets(Lets.Kind.MODEL, 3)), rate.lets());
        assertEquals(Mark.TAX, rate.mark("vat/2"));
        assertEquals(Mark.CHARGE, rate.mark("cover"), "what is not marked is a charge");
        assertEquals(Map.of(), rate.covers());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"lets\": {\"model\": 3}",
                "\"lets\": {\"set\": 1}, \"marks\": {\"cover\": \"waiver\", \"vat/2\": \"tax\"}",
                "\"lets\": {\"unit\": 900}, \"marks\": {\"cover\": \"charge\"}, \"covers\": {\"40 mm\": 2}",
                "\"covers\": {\"40 mm\": 1}"
            })
    void whatIsWrittenReadsAsItWas(String own) {
        Rate rate = good("{\"id\": \"h\", " + own + ", " + BLOCKS + ", " + ADD_ONS + "}");
        Checked<Rate> again = RateJson.reader(Currency.of("EUR")).readAll(RateJson.write(rate));
        assertEquals(rate, again.fold(found -> found, faults -> {
            throw new AssertionError(faults);
        }));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "                                                     | /covers",
                "\"lets\": {}                                         | /lets",
                "\"lets\": {\"model\": 1, \"set\": 2}                 | /lets",
                "\"lets\": {\"model\": 0}                             | /lets/model",
                "\"lets\": {\"unit\": \"3\"}                          | /lets/unit",
                "\"lets\": {\"model\": 1, \"colour\": 2}              | /lets/colour",
                "\"lets\": 3                                          | /lets",
                "\"lets\": {\"set\": 1}, \"covers\": {}               | /covers",
                "\"lets\": {\"set\": 1}, \"marks\": {\"cover\": \"insurance\"} | /marks/cover",
                "\"lets\": {\"set\": 1}, \"marks\": {\"vat/2\": 1}    | /marks/vat~12",
                "\"lets\": {\"set\": 1}, \"marks\": {\"a~b/c\": \"tax\"} | /marks/a~0b~1c",
                "\"lets\": {\"set\": 1}, \"marks\": [\"tax\"]         | /marks"
            })
    void aFaultIsToldAtItsPlace(String own, String pointers) {
        String members = own == null ? "" : own + ", ";
        assertEquals(
                Set.copyOf(List.of(pointers.split(" ", -1))),
                pointers("{\"id\": \"h\", " + members + BLOCKS + ", " + ADD_ONS + "}"));
    }
}
