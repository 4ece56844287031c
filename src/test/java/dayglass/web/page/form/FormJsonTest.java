package dayglass.web.page.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dayglass.base.Fault;
import dayglass.base.Problem;
import dayglass.cost.plan.Question;
import dayglass.wire.Json;
import dayglass.wire.JsonPrint;
import dayglass.wire.costing.CostingRequestReader;
import dayglass.wire.costing.OptionWriter;
import dayglass.wire.costing.OwnedReader;
import dayglass.wire.costing.PurchaseReader;
import dayglass.wire.costing.RentalReader;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormJsonTest {
    private static Question example(String name) throws IOException {
        try (InputStream in = FormJsonTest.class.getResourceAsStream("/dayglass/cost/examples/" + name + ".json")) {
            byte[] text = in == null ? new byte[0] : in.readAllBytes();
            return CostingRequestReader.read(text).fold(question -> question, faults -> {
                throw new AssertionError(faults);
            });
        }
    }

    /** Through the fields of a form and back. */
    private static Json throughAForm(Json json) {
        return FormJson.read(FormJson.compact(FormJson.form(json)));
    }

    private static <T> T good(dayglass.wire.Checked<T> checked) {
        return checked.fold(value -> value, faults -> {
            throw new AssertionError(faults);
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "00-sample",
                "03-weekend-collected-on-friday",
                "05-set-against-singles",
                "07-minimum-and-add-ons",
                "08-buy-beats-rent"
            })
    void everyOptionComesBackFromItsForm(String name) throws IOException {
        Question question = example(name);
        LocalDate first = question.schedule().horizon().from();
        for (Question.Rental rental : question.rentals()) {
            Json json = throughAForm(OptionWriter.rate(rental, own -> {}));
            assertEquals(
                    rental,
                    good(RentalReader.rate(question.currency(), rental.supplier())
                            .readAll(json)));
        }
        for (Question.Purchase purchase : question.purchases()) {
            Json json = throughAForm(OptionWriter.offer(purchase, first));
            assertEquals(
                    purchase,
                    good(PurchaseReader.offer(question.currency(), purchase.supplier(), first)
                            .readAll(json)));
        }
        for (Question.Owned unit : question.owned()) {
            assertEquals(unit, good(OwnedReader.unit().readAll(throughAForm(OptionWriter.owned(unit)))));
        }
    }

    @Test
    void blankRowsAreLeftOutAndTheOthersClosedUp() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("/blocks/0/days", " ");
        typed.put("/blocks/0/price", "");
        typed.put("/blocks/2/days", "7");
        typed.put("/blocks/2/price", "350");
        Form form = FormJson.compact(new Form(typed, List.of(), ""));
        assertEquals(Map.of("/blocks/0/days", "7", "/blocks/0/price", "350"), form.values());
        assertEquals(
                JsonPrint.pretty(Json.object()
                        .put(
                                "blocks",
                                Json.list(List.of(Json.object()
                                        .put("days", 7)
                                        .put("price", "350")
                                        .build())))
                        .build()),
                JsonPrint.pretty(FormJson.read(form)));
    }

    @Test
    void aFaultIsToldAtItsFieldOrTheNearest() {
        Form form = new Form(Map.of("/blocks/0/days", "x", "/addOns/0/on", "hire, tip"), List.of(), "")
                .with(Problem.faulty(List.of(
                        new Fault("/blocks/0/days", "one"),
                        new Fault("/addOns/0/on/1", "two"),
                        new Fault("/addOns/0/percent", "three"),
                        new Fault("", "four"))));
        assertEquals("one", form.fault("/blocks/0/days"));
        assertEquals("two; three", form.fault("/addOns/0/on"));
        assertEquals(List.of("four"), form.otherFaults());
    }
}
