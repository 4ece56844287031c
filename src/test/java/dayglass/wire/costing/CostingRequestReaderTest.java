package dayglass.wire.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.base.Fault;
import dayglass.base.Money;
import dayglass.base.Percent;
import dayglass.cost.DayUse;
import dayglass.cost.plan.Question;
import dayglass.wire.Faults;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CostingRequestReaderTest {
    static List<String> faulty() {
        return Requests.examples("bad-");
    }

    static List<Arguments> faultTable() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/dayglass/wire/costing/faults.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> Arguments.of(
                        line.substring(0, line.lastIndexOf('|') - 1),
                        line.substring(line.lastIndexOf('|') + 1).strip()))
                .toList();
    }

    static List<String> good() {
        return Requests.examples("[0-9]");
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void everyFaultyExampleGivesExactlyItsPointers(String name) {
        Json.Obj expected = (Json.Obj) Requests.json(Requests.example(name + ".expected"));
        Set<String> pointers = new TreeSet<>();
        Requests.list(expected, "pointers").entries().forEach(pointer -> pointers.add(((Json.Text) pointer).value()));
        assertEquals(pointers, Requests.pointers(Requests.example(name)));
    }

    @ParameterizedTest
    @MethodSource("good")
    void everyGoodExampleIsReadAndItsWrittenFormReadsAsTheSameQuestion(String name) {
        Question question = Requests.question(Requests.example(name));
        byte[] written = JsonPrint.bytes(CostingRequestWriter.write(question));
        assertEquals(question, Requests.question(written));
        assertEquals(
                new String(written, StandardCharsets.UTF_8),
                JsonPrint.pretty(CostingRequestWriter.write(Requests.question(written))));
    }

    /**
     * A row changes the base request at some places ({@code pointer := JSON}, {@code pointer + member : JSON},
     * {@code - pointer}, parted by {@code ;;}) and names the pointers of all the faults that this makes.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("faultTable")
    void everyFaultIsToldAtItsPlace(String changes, String pointers) {
        byte[] text = Changes.apply(Requests.example("00-sample"), changes);
        Set<String> expected = new TreeSet<>();
        if (!pointers.isEmpty()) {
            expected.addAll(List.of(pointers.replace("(whole)", "").split(", ", -1)));
        }
        List<Fault> faults = Requests.faults(text);
        assertEquals(expected, new TreeSet<>(faults.stream().map(Fault::pointer).toList()), faults.toString());
        faults.forEach(fault -> assertFalse(fault.message().isBlank()));
    }

    @Test
    void whatIsLeftOutTakesItsDefault() {
        Question question = Requests.question("""
                {"job":"Low Bell","currency":"EUR","schedule":[{"from":"2027-04-05","use":"shoot"}],
                 "needs":[{"slot":"40 mm","count":1}],
                 "rentals":[{"id":"r","supplier":"s","covers":{"40 mm":1},"blocks":[{"days":1,"price":"1"}]}],
                 "purchases":[{"id":"p","supplier":"s","covers":{"40 mm":1},"price":"1","termMonths":1,
                   "resale":{"lossPercentPerYear":"-0.50"},"holding":{}}],
                 "owned":[{"id":"o","covers":{"40 mm":1}}]}
                """.getBytes(StandardCharsets.UTF_8));
        Money zero = Money.of("EUR", "0");
        assertEquals(Percent.ZERO, question.discountRate());
        assertEquals(Optional.empty(), question.cashLimit());
        assertEquals(Set.of(DayUse.PREP, DayUse.SHOOT), question.needs().get(0).on());
        Question.Rental rental = question.rentals().get(0);
        assertEquals(1, rental.copies());
        assertEquals(List.of(), rental.available());
        assertEquals(Optional.empty(), rental.terms().extraDay());
        assertEquals(Map.of(), rental.terms().dayFactors());
        assertEquals(zero, rental.terms().minimumCharge());
        assertEquals(zero, rental.terms().perTrip());
        assertEquals(Optional.empty(), rental.terms().blocks().get(0).startsOn());
        Question.Purchase purchase = question.purchases().get(0);
        assertEquals(LocalDate.of(2027, 4, 5), purchase.availableFrom());
        assertEquals(Percent.ZERO, purchase.terms().tax());
        assertEquals(Percent.ZERO, purchase.terms().resale().sellingCost());
        assertEquals(zero, purchase.terms().holding().storagePerYear());
        assertEquals(Optional.empty(), purchase.terms().service());
        assertEquals(Optional.empty(), purchase.terms().letting());
    }

    @Test
    void theOptionsMayBeTwoHundredInAllAndTheListThatPassesThatIsAtFault() {
        assertEquals(Set.of(), Requests.pointers(Changes.withOptions(100, 60, 40)));
        assertEquals(Set.of("/owned"), Requests.pointers(Changes.withOptions(100, 60, 41)));
        assertEquals(Set.of("/owned"), Requests.pointers(Changes.withOptions(200, 0, 1)));
        assertEquals(Set.of("/purchases"), Requests.pointers(Changes.withOptions(100, 101, 40)));
        assertEquals(Set.of("/rentals"), Requests.pointers(Changes.withOptions(201, 60, 40)));
    }

    @Test
    void sixtyFourSlotsMayBeAskedForAndNeedsIsAtFaultForOneMore() {
        assertEquals(Set.of(), Requests.pointers(Changes.withSlots(64)));
        assertEquals(Set.of("/needs"), Requests.pointers(Changes.withSlots(65)));
    }

    @Test
    void aTextTooLongIsAtFaultAsAWhole() {
        byte[] text = Arrays.copyOf(Requests.example("00-sample"), 2 * 1024 * 1024 + 1);
        Arrays.fill(text, Requests.example("00-sample").length, text.length, (byte) ' ');
        assertEquals(Set.of(""), Requests.pointers(text));
        assertEquals(Set.of(), Requests.pointers(Arrays.copyOf(text, 2 * 1024 * 1024)));
    }

    @Test
    void aTextFullOfFaultsIsAnsweredWithoutRunningOutOfAnything() {
        String text = "{\"schedule\":[" + "{},".repeat(600_000) + "{}]}";
        assertEquals(
                Faults.MOST_KEPT,
                Requests.faults(text.getBytes(StandardCharsets.UTF_8)).size());
        String deep = "{\"job\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}";
        assertTrue(Requests.pointers(deep).contains("/job"));
        assertTrue(Requests.pointers("[]").contains(""));
    }
}
